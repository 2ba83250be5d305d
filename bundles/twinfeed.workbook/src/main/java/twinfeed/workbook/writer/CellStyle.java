// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

/**
 * How a cell looks, as a value; a workbook makes each style once, at its first use.
 *
 * @param lettering letters
 * @param fill background
 * @param format number format of the spreadsheet, empty for general
 * @param align where the content stands
 * @param border lines
 * @param wrap whether long text runs over several lines, from the top
 * @param quoted whether the cell keeps a leading = + - @ as text even when somebody edits it
 */
public record CellStyle(
        Lettering lettering, Fill fill, String format, Alignment align, Border border, boolean wrap, boolean quoted) {
    /** Letters. */
    public enum Lettering {
        /** Running text. */
        BODY(10, false),
        /** Emphasis. */
        BOLD(10, true),
        /** What is less important. */
        MUTED(9, false),
        /** Small print. */
        SMALL(8, false),
        /** Headings in small print. */
        SMALL_BOLD(8, true),
        /** A heading within a sheet. */
        HEADING(11, true),
        /** A sheet's title. */
        TITLE(16, true),
        /** Heads of tables, on the accent. */
        HEAD(9, true),
        /** The figure that matters. */
        FIGURE(12, true),
        /** A good answer. */
        GOOD(10, true),
        /** A bad answer. */
        BAD(10, true),
        /** A doubtful answer. */
        DOUBT(10, true);

        final int points;
        final boolean bold;

        Lettering(int points, boolean bold) {
            this.points = points;
            this.bold = bold;
        }
    }

    /** Backgrounds. */
    public enum Fill {
        /** White. */
        PLAIN,
        /** The accent. */
        HEAD,
        /** A tint of the accent. */
        SOFT,
        /** For values that may be changed. */
        INPUT,
        /** Behind a good answer. */
        GOOD,
        /** Behind a bad answer. */
        BAD,
        /** Behind a doubtful answer. */
        DOUBT,
        /** Behind an answer that does not matter. */
        GREY
    }

    /** Horizontal places. */
    public enum Alignment {
        /** Left. */
        LEFT,
        /** Centre. */
        CENTRE,
        /** Right. */
        RIGHT
    }

    /** Lines. */
    public enum Border {
        /** None. */
        NONE,
        /** A fine line below. */
        BELOW,
        /** A line above, for sums. */
        ABOVE,
        /** All around. */
        BOX
    }

    /** Running text, from the top, over several lines if need be. */
    public static final CellStyle BODY =
            new CellStyle(Lettering.BODY, Fill.PLAIN, "", Alignment.LEFT, Border.NONE, true, false);

    /** The same look in other letters. */
    public CellStyle lettering(Lettering other) {
        return new CellStyle(other, fill, format, align, border, wrap, quoted);
    }

    /** On another background. */
    public CellStyle fill(Fill other) {
        return new CellStyle(lettering, other, format, align, border, wrap, quoted);
    }

    /** With a number format, to the right; figures are never broken over lines. */
    public CellStyle format(String other) {
        return new CellStyle(lettering, fill, other, Alignment.RIGHT, border, false, quoted);
    }

    /** Aligned otherwise. */
    public CellStyle align(Alignment other) {
        return new CellStyle(lettering, fill, format, other, border, wrap, quoted);
    }

    /** With other lines. */
    public CellStyle border(Border other) {
        return new CellStyle(lettering, fill, format, align, other, wrap, quoted);
    }

    /** On one line. */
    public CellStyle single() {
        return new CellStyle(lettering, fill, format, align, border, false, quoted);
    }

    CellStyle asText() {
        return quoted ? this : new CellStyle(lettering, fill, format, align, border, wrap, true);
    }
}
