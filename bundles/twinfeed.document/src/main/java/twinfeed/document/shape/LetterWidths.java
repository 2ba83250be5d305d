// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.shape;

/** How wide text is in a typeface like Helvetica, for media that have no letters to measure while a drawing is laid out. */
public final class LetterWidths {
    /** Widths of ASCII 32 to 126 in thousandths of the letter size: Adobe's metrics of Helvetica, which Arial and Liberation Sans keep. */
    private static final short[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
                556, 556, 556,
        556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722,
                778, 667, 778,
        722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556,
                556, 222, 222,
        500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
    };

    /** What a letter outside ASCII is taken for: wider than most of the Latin ones. */
    private static final int OTHER = 650;

    /** Where the scripts begin whose letters are as wide as high. */
    private static final char FULL_WIDTH = '\u1100';

    private static final int FULL = 1000;

    /** Bold letters are wider by this much at most, over a text. */
    private static final double BOLD = 1.08;

    private LetterWidths() {}

    /** The width of a text on one line, in the unit of the letters' size. */
    public static double of(String text, double size, boolean bold) {
        long sum = 0;
        for (int at = 0; at < text.length(); at++) {
            sum += width(text.charAt(at));
        }
        return sum / 1000.0 * size * (bold ? BOLD : 1);
    }

    /**
     * Widths for letters of a size.
     *
     * @param safety how much wider the letters may be that a reader sees; 1 where they are these
     */
    public static TextWidth at(double size, double safety) {
        return (text, share, bold) -> of(text, size * share.share(), bold) * safety;
    }

    private static int width(char letter) {
        if (letter >= ' ' && letter <= '~') {
            return WIDTHS[letter - ' '];
        }
        return switch (letter) {
            case '\u00A0', '·', '‘', '’' -> 278;
            case '²', '³', '°', '“', '”' -> 400;
            case '£', '€', '±', '–', '×', '−', 'ß', 'ä', 'ö', 'ü', 'é', 'è', 'µ' -> 584;
            default -> letter >= FULL_WIDTH && (letter < '\u2000' || letter > '\u27FF') ? FULL : OTHER;
        };
    }
}
