// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

/**
 * The colours of a document: one accent, everything else follows. All are 0xRRGGBB.
 *
 * @param accent the firm's colour; light accents are darkened so that white text on them stays readable
 */
public record Palette(int accent) {
    public static final int INK = 0x22272B;
    public static final int MUTED = 0x5F6B73;
    public static final int RULE = 0xC9CFD4;
    public static final int WHITE = 0xFFFFFF;

    /** Brightest accent on which white text has a contrast of at least 4.5 to 1 (WCAG 2.1, success criterion 1.4.3). */
    private static final double BRIGHTEST = 1.05 / 4.5 - 0.05;

    public Palette {
        accent &= 0xFFFFFF;
        while (luminance(accent) > BRIGHTEST) {
            accent = mix(accent, 0, 0.06);
        }
    }

    /** The accent as a tint of paper. */
    public int soft() {
        return mix(accent, WHITE, 0.90);
    }

    /** The accent as a fine line. */
    public int line() {
        return mix(accent, WHITE, 0.55);
    }

    /** Colours of curves: grey for what is there now, the accent for what is offered first, then others that differ in lightness too. */
    public int curve(int at) {
        int[] colours = {0x7F8C94, accent, 0xC9761F, 0x2E8B6F, 0x7B4FA0, 0xA8323E};
        return colours[at % colours.length];
    }

    private static int mix(int from, int to, double share) {
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int a = from >> shift & 0xFF;
            int b = to >> shift & 0xFF;
            mixed |= (int) Math.round(a + (b - a) * share) << shift;
        }
        return mixed;
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xFF) + 0.7152 * linear(rgb >> 8 & 0xFF) + 0.0722 * linear(rgb & 0xFF);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
