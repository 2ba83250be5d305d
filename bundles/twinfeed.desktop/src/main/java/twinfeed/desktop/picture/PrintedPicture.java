// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.picture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;

/** A picture fine enough for paper. */
public final class PrintedPicture {
    /** A picture that is as wide as a page gets about 290 dots to the inch. */
    private static final int PERCENT = 300;

    private PrintedPicture() {}

    /** Draws an SVG three times as large as on a screen; the answer is a PNG. */
    public static byte[] png(Display display, String svg) {
        try {
            Path file = Files.createTempFile("twinfeed-", ".svg");
            try {
                Files.writeString(file, svg);
                Image image = new Image(display, (int zoom) -> zoom == 100 ? file.toString() : null);
                ImageData pixels = image.getImageData(PERCENT);
                image.dispose();
                return Png.of(pixels);
            } finally {
                Files.delete(file);
            }
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }
}
