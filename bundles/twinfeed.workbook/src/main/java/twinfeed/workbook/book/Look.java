// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.book;

/**
 * How a cell looks. Looks are values: a book makes the style of each one once, at its first use.
 *
 * @param ink letters
 * @param paper background
 * @param format number format of the spreadsheet, empty for general
 * @param side where the content stands
 * @param edge lines
 * @param wrap whether long text runs over several lines, from the top
 * @param quoted whether the cell keeps a leading = + - @ as text even when somebody edits it
 */
public record Look(Ink ink, Paper paper, String format, Side side, Edge edge, boolean wrap, boolean quoted) {
    /** Letters. */
    public enum Ink {
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

        Ink(int points, boolean bold) {
            this.points = points;
            this.bold = bold;
        }
    }

    /** Backgrounds. */
    public enum Paper {
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
    public enum Side {
        /** Left. */
        LEFT,
        /** Centre. */
        CENTRE,
        /** Right. */
        RIGHT
    }

    /** Lines. */
    public enum Edge {
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
    public static final Look BODY = new Look(Ink.BODY, Paper.PLAIN, "", Side.LEFT, Edge.NONE, true, false);

    /** The same look in other letters. */
    public Look ink(Ink other) {
        return new Look(other, paper, format, side, edge, wrap, quoted);
    }

    /** On another background. */
    public Look paper(Paper other) {
        return new Look(ink, other, format, side, edge, wrap, quoted);
    }

    /** With a number format, to the right; figures are never broken over lines. */
    public Look format(String other) {
        return new Look(ink, paper, other, Side.RIGHT, edge, false, quoted);
    }

    /** At another side. */
    public Look side(Side other) {
        return new Look(ink, paper, format, other, edge, wrap, quoted);
    }

    /** With other lines. */
    public Look edge(Edge other) {
        return new Look(ink, paper, format, side, other, wrap, quoted);
    }

    /** On one line. */
    public Look single() {
        return new Look(ink, paper, format, side, edge, false, quoted);
    }

    Look asText() {
        return quoted ? this : new Look(ink, paper, format, side, edge, wrap, true);
    }
}
