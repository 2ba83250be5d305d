// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How a sheet prints, on A4, and how it first shows on the screen. */
public final class PageSetup {
    /** What a page in portrait holds between its margins, in points, less what programs measure differently. */
    static final double PORTRAIT_PT = 842 - 2 * 0.6 * 72 - 12;

    private static final double MARGIN_INCH = 0.5;

    private final XSSFSheet sheet;

    PageSetup(XSSFSheet sheet) {
        this.sheet = sheet;
        sheet.setDisplayGridlines(false);
        sheet.setPrintGridlines(false);
        sheet.setFitToPage(true);
        sheet.setHorizontallyCenter(true);
        PrintSetup print = sheet.getPrintSetup();
        print.setPaperSize((short) (PaperSize.A4_PAPER.ordinal() + 1));
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        margins(MARGIN_INCH, 0.6);
    }

    private void margins(double side, double ends) {
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.LEFT, side);
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.RIGHT, side);
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.TOP, ends);
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.BOTTOM, ends);
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.HEADER, 0.25);
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.FOOTER, 0.25);
    }

    /** Prints across the long side. */
    public PageSetup landscape() {
        sheet.getPrintSetup().setLandscape(true);
        return this;
    }

    /** Prints on one page. */
    public PageSetup onePage() {
        sheet.getPrintSetup().setFitHeight((short) 1);
        return this;
    }

    /** Repeats rows at the top of every page, and keeps them in sight on the screen. */
    public PageSetup header(int firstRow, int lastRow) {
        sheet.setRepeatingRows(CellRangeAddress.valueOf((firstRow + 1) + ":" + (lastRow + 1)));
        sheet.createFreezePane(0, lastRow + 1);
        return this;
    }

    /** What stands at the foot of every printed page: left a text, right the page of pages. */
    public PageSetup footer(String left, String page) {
        // In a footer & begins a code; a literal one is doubled.
        sheet.getFooter().setLeft("&8" + guard(left));
        sheet.getFooter().setRight("&8" + guard(page).replace("{page}", "&P").replace("{pages}", "&N"));
        return this;
    }

    /** A size code takes the digits that follow it, so a text that begins with one is set apart by a space. */
    private static String guard(String text) {
        String doubled = text.replace("&", "&&");
        return !doubled.isEmpty() && Character.isDigit(doubled.charAt(0)) ? " " + doubled : doubled;
    }

    /** Prints the sheet from its top to a row and a column alone; the rest is for the screen. */
    public PageSetup printOnly(int lastRow, int lastColumn) {
        sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, lastColumn, 0, lastRow);
        return this;
    }

    /**
     * Prints nothing of the sheet: its print range is an empty cell, and an empty page is not printed.
     *
     * @param emptyRow a row whose first cell is empty
     */
    public PageSetup printNothing(int emptyRow) {
        sheet.getWorkbook().setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, 0, emptyRow, emptyRow);
        return this;
    }

    /** Prints on so many pages at most. */
    public PageSetup pages(int most) {
        sheet.getPrintSetup().setFitHeight((short) most);
        return this;
    }

    /** Starts a new printed page after a row. */
    public PageSetup breakAfter(int row) {
        sheet.setRowBreak(row);
        return this;
    }
}
