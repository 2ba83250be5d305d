// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

/** Where the printed pages of a sheet end: before the row that no longer fits, and before the headings that belong to it. */
final class PageBreaks {
    private final PageSetup setup;
    private final double pageHeight;
    private double used;
    private int keptRows;
    private double keptHeight;
    private boolean keep;

    /**
     * Breaks of a sheet.
     *
     * @param setup what takes the breaks
     * @param pageHeight what a page holds, in points of the sheet
     */
    PageBreaks(PageSetup setup, double pageHeight) {
        this.setup = setup;
        this.pageHeight = pageHeight;
    }

    /** The row that comes next to {@link #row} stays with the one behind it. */
    void keepWithNext() {
        keep = true;
    }

    /** A row is complete. */
    void row(int index, double points) {
        // Rows that are kept together and fill a page of their own are broken where the page ends.
        if (used + points > pageHeight && used > keptHeight) {
            setup.breakAfter(index - keptRows - 1);
            used = keptHeight;
        }
        used += points;
        keptRows = keep ? keptRows + 1 : 0;
        keptHeight = keep ? keptHeight + points : 0;
        keep = false;
    }
}
