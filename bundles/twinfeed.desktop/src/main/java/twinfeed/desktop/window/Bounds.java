// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import twinfeed.desktop.Settings;

/**
 * Size of the window: as it was left, or as large as is comfortable, but never larger than the screen.
 *
 * @param width width
 * @param height height
 */
record Bounds(int width, int height) {
    private static final String LAYOUT = "window";
    private static final int WIDTH = 1480;
    private static final int HEIGHT = 940;

    /** The size for this screen. */
    static Bounds of(Settings settings, Display display) {
        int[] left = settings.layout(LAYOUT, WIDTH, HEIGHT);
        Rectangle screen = display.getPrimaryMonitor().getClientArea();
        return new Bounds(Math.min(left[0], screen.width), Math.min(left[1], screen.height));
    }

    /** Gives the window this size. */
    void apply(MWindow window) {
        window.setWidth(width);
        window.setHeight(height);
    }

    /** Remembers the size of a window. */
    static void keep(Settings settings, MWindow window) {
        if (window.getWidth() > 0 && window.getHeight() > 0) {
            settings.keepLayout(LAYOUT, window.getWidth(), window.getHeight());
        }
    }
}
