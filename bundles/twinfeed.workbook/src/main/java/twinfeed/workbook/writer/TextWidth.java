// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import twinfeed.document.shape.LetterWidths;

/**
 * How wide text is and over how many lines it runs, so that rows are as high as their text on every system. Spreadsheet programs do
 * not make merged cells high enough by themselves, and asking the platform for its fonts costs more than writing a book.
 */
public final class TextWidth {
    /** Spreadsheet programs break a little earlier than the plain sum says. */
    private static final double SAFETY = 1.03;

    private TextWidth() {}

    /** The width of a text on one line, in points. */
    public static double points(String text, int size, boolean bold) {
        return LetterWidths.of(text, size, bold) * SAFETY;
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
}
