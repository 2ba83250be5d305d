// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.picture;

import java.io.ByteArrayOutputStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;

/** Pictures as PNG. */
public final class Png {
    private Png() {}

    /** The content of a file with these pixels. */
    public static byte[] of(ImageData pixels) {
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {pixels};
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        loader.save(bytes, SWT.IMAGE_PNG);
        return bytes.toByteArray();
    }
}
