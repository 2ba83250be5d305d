// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.jspecify.annotations.Nullable;

/**
 * A sheet written from top to bottom. Columns are counted from 0, as in POI; rows begin with {@link #row()}, and a row grows with the
 * text that is put into it.
 */
public final class SheetWriter {
    /** Longest text that a cell can hold in every spreadsheet program is 32,767 letters. */
    private static final int LONGEST = 32_000;

    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    private static final double LEADING = 1.27;
    private static final double ROW_PADDING = 3;

    /** No spreadsheet program makes a row higher, in points. */
    private static final double HIGHEST = 409;

    /** A row without content, in points. */
    private static final double PLAIN = 15;

    /** What a cell holds. */
    private interface Content {
        void write(RowWriter rows, int column, int style);
    }

    private record Cell(CellStyle look, Content content) {}

    private final WorkbookWriter book;
    private final XSSFSheet sheet;
    private final RowWriter rows;
    private final PageSetup setup;
    private @Nullable PageBreaks breaks;
    private double[] widthsPt = {};
    private @Nullable Cell[] cells = new @Nullable Cell[16];
    private int rowIndex = -1;
    private int lastColumn;
    private boolean open;
    private double height;
    private double heightSum;

    SheetWriter(WorkbookWriter book, XSSFSheet sheet, RowWriter rows) {
        this.book = book;
        this.sheet = sheet;
        this.rows = rows;
        this.setup = new PageSetup(sheet);
    }

    RowWriter rows() {
        return rows;
    }

    /** Its set-up for the printer and the screen. */
    public PageSetup setup() {
        return setup;
    }

    /** POI's sheet underneath, without its rows: for charts and pictures. */
    public XSSFSheet sheet() {
        return sheet;
    }

    /** The book. */
    public WorkbookWriter book() {
        return book;
    }

    /** Column widths, in digits of running text. */
    public SheetWriter columns(double... digits) {
        widthsPt = new double[digits.length];
        for (int column = 0; column < digits.length; column++) {
            sheet.setColumnWidth(column, (int) Math.round(digits[column] * 256));
            // A digit of Arial 10 is 7 pixels of 1/96 inch wide.
            widthsPt[column] = digits[column] * 7 * 0.75;
        }
        return this;
    }

    /** Makes rows of one line of running text the sheet's usual ones, so that each need not say how high it is. */
    public SheetWriter plainRows() {
        double points = Math.round((CellStyle.Lettering.BODY.points * LEADING + ROW_PADDING) * 4) / 4.0;
        sheet.setDefaultRowHeightInPoints((float) points);
        sheet.getCTWorksheet().getSheetFormatPr().setCustomHeight(true);
        rows.plain(points);
        return this;
    }

    /**
     * From now on a formula that follows from an earlier one by moving it, as a filled-down one does, is written as such (ECMA-376 part 1,
     * 18.3.1.40): for a sheet where the same computations stand many times.
     */
    public SheetWriter shareFormulas() {
        rows.shareFormulas();
        return this;
    }

    /** Makes a cell of the present row a link to a cell of the book. */
    public SheetWriter link(int column, String address) {
        XSSFHyperlink link = book.under().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
        link.setAddress(address);
        link.setCellReference(new CellReference(rowIndex, column));
        sheet.addHyperlink(link);
        return this;
    }

    /**
     * From now on the printed pages are broken here, so that no row that was marked by {@link #keepWithNext()} ends one. The sheet is one of
     * portrait that fits a page's width; where a program prints it smaller, a page holds less than it could.
     */
    public SheetWriter breakPages() {
        breaks = new PageBreaks(setup, PageSetup.PORTRAIT_PT);
        return this;
    }

    /** Prints the present row on the page of the next one. */
    public SheetWriter keepWithNext() {
        if (breaks != null) {
            breaks.keepWithNext();
        }
        return this;
    }

    /** Begins the next row. */
    public SheetWriter row() {
        endRow();
        rowIndex++;
        open = true;
        height = 0;
        return this;
    }

    /** Leaves an empty row of this height in points. */
    public SheetWriter gap(double points) {
        row();
        return height(points);
    }

    /** Makes the row at least this high, in points. */
    public SheetWriter height(double points) {
        height = Math.max(height, points);
        return this;
    }

    /** Ends the last row and with it the sheet. */
    void end() {
        endRow();
        if (rowIndex >= 0) {
            sheet.setDimensionOverride(new CellRangeAddress(0, rowIndex, 0, lastColumn));
        }
    }

    private void endRow() {
        if (open) {
            double points = Math.round(Math.min(HIGHEST, height == 0 ? PLAIN : height) * 4) / 4.0;
            rows.begin(rowIndex, points);
            for (int column = 0; column < cells.length; column++) {
                Cell cell = cells[column];
                if (cell != null) {
                    cell.content().write(rows, column, book.looks().index(cell.look()));
                    lastColumn = Math.max(lastColumn, column);
                }
            }
            rows.end();
            if (breaks != null) {
                breaks.row(rowIndex, points);
            }
            Arrays.fill(cells, null);
            heightSum += points;
            height = 0;
            open = false;
        }
    }

    /** Sum of the heights of the rows so far, in points. */
    public double heightSum() {
        return heightSum + height;
    }

    /** Index of the present row, from 0. */
    public int rowIndex() {
        return rowIndex;
    }

    /** The address of a cell of the present row, without sheet and dollar signs. */
    public String address(int column) {
        return CellReference.convertNumToColString(column) + (rowIndex + 1);
    }

    /** The address of a cell of a row that is still to come, counted from the present one. */
    public String addressBelow(int column, int rows) {
        return CellReference.convertNumToColString(column) + (rowIndex + 1 + rows);
    }

    /** The address of a cell of the present row as seen from any sheet. */
    public String fullAddress(int column) {
        return sheetReference() + "!$" + CellReference.convertNumToColString(column) + "$" + (rowIndex + 1);
    }

    /** The sheet's name as formulas write it. */
    public String sheetReference() {
        return "'" + sheet.getSheetName().replace("'", "''") + "'";
    }

    /** A text, whatever it begins with; absent is an empty cell. */
    public SheetWriter text(int column, @Nullable String text, CellStyle look) {
        return text(column, column, text, look);
    }

    /** A text over several columns of the row, which are merged. */
    public SheetWriter text(int first, int last, @Nullable String text, CellStyle look) {
        String kept = text == null ? "" : cut(text.replace("\r\n", "\n"));
        CellStyle safe = !kept.isEmpty() && "=+-@".indexOf(kept.charAt(0)) >= 0 ? look.asText() : look;
        span(first, last, safe);
        if (!kept.isEmpty()) {
            put(first, safe, (to, column, style) -> to.text(column, style, kept));
        }
        grow(kept, width(first, last), look);
        return this;
    }

    /** Several columns of the row, merged and empty; what is put into the first one then fills them. */
    public SheetWriter span(int first, int last, CellStyle look) {
        for (int column = first; column <= last; column++) {
            blank(column, look);
        }
        if (last > first) {
            sheet.addMergedRegionUnsafe(new CellRangeAddress(rowIndex, rowIndex, first, last));
        }
        return this;
    }

    private static String cut(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) + " …" : text;
    }

    /** A number; absent is an empty cell. */
    public SheetWriter number(int column, @Nullable Number value, CellStyle look) {
        if (value == null) {
            return blank(column, look);
        }
        double number = value.doubleValue();
        return put(column, look, (to, at, style) -> to.number(at, style, number));
    }

    /** A date; absent is an empty cell. */
    public SheetWriter date(int column, @Nullable LocalDate date, CellStyle look) {
        return number(column, date == null ? null : ChronoUnit.DAYS.between(DAY_ZERO, date), look);
    }

    /** A formula with the value that it has. */
    public SheetWriter formula(int column, String formula, double value, CellStyle look) {
        return put(column, look, (to, at, style) -> to.formula(at, style, formula, value));
    }

    /** A formula with the exact value that it has. */
    public SheetWriter formula(int column, String formula, BigDecimal value, CellStyle look) {
        return formula(column, formula, value.doubleValue(), look);
    }

    /** A formula with the text that it has. */
    public SheetWriter formula(int column, String formula, String text, CellStyle look) {
        return formula(column, column, formula, text, look);
    }

    /** A formula with the text that it has, over several columns of the row, which are merged. */
    public SheetWriter formula(int first, int last, String formula, String text, CellStyle look) {
        span(first, last, look);
        put(first, look, (to, at, style) -> to.formula(at, style, formula, text));
        grow(text, width(first, last), look);
        return this;
    }

    /** A cell that has a style and no value. */
    public SheetWriter blank(int column, CellStyle look) {
        return put(column, look, RowWriter::blank);
    }

    /** The width of columns, in points. */
    public double width(int first, int last) {
        double sum = -4; // the cell's own margins
        for (int column = first; column <= last && column < widthsPt.length; column++) {
            sum += widthsPt[column];
        }
        return sum;
    }

    /** Column in which a distance from the left edge of a column falls, and the rest of it there in EMU. */
    int[] columnAt(int column, double points) {
        int at = column;
        double rest = points;
        while (at < widthsPt.length - 1 && rest > widthsPt[at]) {
            rest -= widthsPt[at];
            at++;
        }
        return new int[] {at, org.apache.poi.util.Units.toEMU(rest)};
    }

    private void grow(String text, double width, CellStyle look) {
        int lines = look.wrap() ? TextWidth.lines(text, width, look.lettering()) : 1;
        height(lines * look.lettering().points * LEADING + ROW_PADDING);
    }

    private SheetWriter put(int column, CellStyle look, Content content) {
        if (!open) {
            throw new IllegalStateException("no row begun");
        }
        if (column >= cells.length) {
            cells = Arrays.copyOf(cells, column + 16);
        }
        cells[column] = new Cell(look, content);
        return height(look.lettering().points * LEADING + ROW_PADDING);
    }
}
