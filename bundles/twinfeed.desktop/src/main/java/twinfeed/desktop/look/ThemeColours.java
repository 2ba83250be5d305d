// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import twinfeed.document.shape.Tone;

/** Colours for what stands on the ground of a control, be it light or dark. */
public final class ThemeColours {
    private static final double MIDDLE = 0.18;

    private ThemeColours() {}

    /** The colour of a tone on a control's ground. */
    public static Color of(Tone tone, Control control) {
        int rgb = tone.rgb(dark(control.getBackground().getRGB()));
        return new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }

    /** A colour between a control's ground and its text: for lines and quiet areas. */
    public static Color between(Control control, double shareOfText) {
        RGB ground = control.getBackground().getRGB();
        RGB text = control.getForeground().getRGB();
        return new Color(
                mix(ground.red, text.red, shareOfText),
                mix(ground.green, text.green, shareOfText),
                mix(ground.blue, text.blue, shareOfText));
    }

    /** A tone mixed into a control's ground, for areas behind text. */
    public static Color tint(Tone tone, Control control, double share) {
        RGB ground = control.getBackground().getRGB();
        Color full = of(tone, control);
        return new Color(
                mix(ground.red, full.getRed(), share),
                mix(ground.green, full.getGreen(), share),
                mix(ground.blue, full.getBlue(), share));
    }

    private static int mix(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }

    /** Whether light text is read better on this ground than dark text. */
    public static boolean dark(RGB ground) {
        return luminance(ground) < MIDDLE;
    }

    /** Relative luminance, 0 to 1, by WCAG 2.1. */
    public static double luminance(RGB colour) {
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
    }

    /** Contrast of two colours, 1 to 21, by WCAG 2.1. */
    public static double contrast(RGB one, RGB other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
