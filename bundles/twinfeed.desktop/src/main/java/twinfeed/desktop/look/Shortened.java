// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.swt.graphics.GC;

/** Texts that have to fit: what is cut ends in an ellipsis, so that the cut is seen. */
public final class Shortened {
    private Shortened() {}

    /** As much of a text as there is room for. */
    public static String to(GC gc, String text, int width) {
        if (gc.textExtent(text).x <= width) {
            return text;
        }
        int length = text.length();
        while (length > 0 && gc.textExtent(text.substring(0, length) + "\u2026").x > width) {
            length--;
        }
        return length == 0 ? "" : text.substring(0, length) + "\u2026";
    }
}
