// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.picture;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.AtomicFile;

/**
 * Saves what a control draws, as SVG or as PNG.
 *
 * @param shell over which window to ask
 * @param words texts
 * @param written told where it was written
 * @param refused told why it was not written
 */
public record PictureSaving(Shell shell, Words words, Consumer<Path> written, Consumer<String> refused) {
    /** Asks where, and saves it there. */
    public void ask(Control drawn, String svg) {
        FileQuestion.picture(shell, words).save("picture.save", null).ifPresent(path -> save(drawn, svg, path));
    }

    /** Saves it: as PNG as the screen shows it, else as SVG. */
    public void save(Control drawn, String svg, Path path) {
        // The pixels are taken now, on the window's thread; the rest is done elsewhere.
        @Nullable ImageData pixels = path.toString().endsWith(".png") ? pixels(drawn) : null;
        CompletableFuture.runAsync(() -> {
            try {
                AtomicFile.write(path, pixels == null ? svg.getBytes(StandardCharsets.UTF_8) : Png.of(pixels));
                onDisplay(() -> written.accept(path));
            } catch (RuntimeException unwritable) {
                onDisplay(() -> refused.accept(String.valueOf(unwritable.getMessage())));
            }
        });
    }

    private void onDisplay(Runnable then) {
        if (!shell.isDisposed()) {
            shell.getDisplay().asyncExec(() -> {
                if (!shell.isDisposed()) {
                    then.run();
                }
            });
        }
    }

    private static ImageData pixels(Control drawn) {
        Point size = drawn.getSize();
        Image image = new Image(drawn.getDisplay(), Math.max(1, size.x), Math.max(1, size.y));
        GC gc = new GC(image);
        drawn.print(gc);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        return data;
    }
}
