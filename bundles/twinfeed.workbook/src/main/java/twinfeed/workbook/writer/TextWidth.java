// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

/**
 * How wide text is and over how many lines it runs, so that rows are as high as their text on every system. Spreadsheet programs do
 * not make merged cells high enough by themselves, and asking the platform for its fonts costs more than writing a book.
 */
public final class TextWidth {
    /** Widths of ASCII 32 to 126 in thousandths of the letter size: Adobe's metrics of Helvetica, which Arial keeps. */
    private static final short[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
                556, 556, 556,
        556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722,
                778, 667, 778,
        722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556,
                556, 222, 222,
        500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
    };

    /** What a letter outside ASCII is taken for: wider than most of the Latin ones, so that rows become too high, not too low. */
    private static final int OTHER = 650;

    /** Bold letters are wider by this much at most, over a text. */
    private static final double BOLD = 1.08;

    /** Spreadsheet programs break a little earlier than the plain sum says. */
    private static final double SAFETY = 1.03;

    private TextWidth() {}

    /** The width of a text on one line, in points. */
    public static double points(String text, int size, boolean bold) {
        long sum = 0;
        for (int at = 0; at < text.length(); at++) {
            sum += width(text.charAt(at));
        }
        return sum / 1000.0 * size * (bold ? BOLD : 1) * SAFETY;
    }

    /** The number of lines of a text in a column of this width in points; at least 1. */
    public static int lines(String text, double width, CellStyle.Lettering ink) {
        int lines = 0;
        for (String paragraph : text.split("\n", -1)) {
            lines += paragraphLines(paragraph, Math.max(width, ink.points), ink);
        }
        return lines;
    }

    private static int paragraphLines(String paragraph, double width, CellStyle.Lettering ink) {
        double space = points(" ", ink.points, ink.bold);
        double used = 0;
        int lines = 1;
        for (String word : paragraph.split(" ", -1)) {
            double wide = points(word, ink.points, ink.bold);
            if (used > 0 && used + space + wide > width) {
                lines++;
                used = 0;
            }
            // A word wider than the column is broken anywhere.
            int full = (int) (wide / width);
            lines += full;
            used += (used > 0 ? space : 0) + wide - full * width;
        }
        return lines;
    }

    private static int width(char letter) {
        if (letter >= ' ' && letter <= '~') {
            return WIDTHS[letter - ' '];
        }
        return switch (letter) {
            case '\u00A0', '·', '‘', '’' -> 278;
            case '²', '³', '°', '“', '”' -> 400;
            case '£', '€', '±', '–', '×', 'ß', 'ä', 'ö', 'ü', 'é', 'è', 'µ' -> 584;
            default -> OTHER;
        };
    }
}
