// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Shell;

/** The program's sign in the sizes that systems ask for: two feeds that meet. */
final class WindowIcons {
    private static final int[] SIZES = {16, 32, 48, 64, 128, 256};

    private WindowIcons() {}

    /** Gives a window its sign. */
    static void apply(Shell shell) {
        List<Image> images = new ArrayList<>();
        for (int size : SIZES) {
            try (InputStream stream = WindowIcons.class.getResourceAsStream("/icons/twinfeed" + size + ".png")) {
                if (stream != null) {
                    images.add(new Image(shell.getDisplay(), stream));
                }
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        shell.setImages(images.toArray(Image[]::new));
        shell.addListener(SWT.Dispose, event -> images.forEach(Image::dispose));
    }
}
