// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFCell;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.jspecify.annotations.Nullable;

/**
 * A sheet written from top to bottom. Columns are counted from 0, as in POI; rows begin with {@link #row()}, and a row grows with the
 * text that is put into it.
 */
public final class Page {
    /** Longest text that a cell can hold in every spreadsheet program is 32,767 letters. */
    private static final int LONGEST = 32_000;

    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    private static final double LEADING = 1.27;
    private static final double ROW_PADDING = 3;

    private final Book book;
    private final SXSSFSheet sheet;
    private final PageSetup setup;
    private double[] widthsPt = {};
    private int rowIndex = -1;
    private @Nullable SXSSFRow row;
    private double height;
    private double heightSum;

    Page(Book book, SXSSFSheet sheet) {
        this.book = book;
        this.sheet = sheet;
        this.setup = new PageSetup(sheet);
    }

    /** A new sheet at the end of a book. */
    public static Page add(Book book, String name) {
        return new Page(book, book.createSheet(name));
    }

    /** Its set-up for the printer and the screen. */
    public PageSetup setup() {
        return setup;
    }

    /** The sheet. */
    public SXSSFSheet sheet() {
        return sheet;
    }

    /** The book. */
    public Book book() {
        return book;
    }

    /** Column widths, in digits of running text. */
    public Page columns(double... digits) {
        widthsPt = new double[digits.length];
        for (int column = 0; column < digits.length; column++) {
            sheet.setColumnWidth(column, (int) Math.round(digits[column] * 256));
            // A digit of Arial 10 is 7 pixels of 1/96 inch wide.
            widthsPt[column] = digits[column] * 7 * 0.75;
        }
        return this;
    }

    /** Begins the next row. */
    public Page row() {
        endRow();
        rowIndex++;
        row = sheet.createRow(rowIndex);
        height = 0;
        return this;
    }

    /** Leaves an empty row of this height in points. */
    public Page gap(double points) {
        row();
        return height(points);
    }

    /** Makes the row at least this high, in points. */
    public Page height(double points) {
        height = Math.max(height, points);
        return this;
    }

    /** Ends the last row; call it when the sheet is complete. */
    public void end() {
        endRow();
    }

    private void endRow() {
        SXSSFRow open = row;
        if (open != null) {
            double points = Math.min(409, height == 0 ? 15 : height);
            open.setHeightInPoints((float) (Math.round(points * 4) / 4.0));
            heightSum += points;
            row = null;
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

    /** The address of a cell of the present row as seen from any sheet. */
    public String fullAddress(int column) {
        return sheetReference() + "!$" + CellReference.convertNumToColString(column) + "$" + (rowIndex + 1);
    }

    /** The sheet's name as formulas write it. */
    public String sheetReference() {
        return "'" + sheet.getSheetName().replace("'", "''") + "'";
    }

    /** A text, whatever it begins with; absent is an empty cell. */
    public Page text(int column, @Nullable String text, Look look) {
        return text(column, column, text, look);
    }

    /** A text over several columns of the row, which are merged. */
    public Page text(int first, int last, @Nullable String text, Look look) {
        String kept = text == null ? "" : cut(text);
        Look safe = !kept.isEmpty() && "=+-@".indexOf(kept.charAt(0)) >= 0 ? look.asText() : look;
        for (int column = first; column <= last; column++) {
            cell(column, safe);
        }
        if (!kept.isEmpty()) {
            cellOf(first).setCellValue(kept);
        }
        if (last > first) {
            sheet.addMergedRegionUnsafe(new CellRangeAddress(rowIndex, rowIndex, first, last));
        }
        grow(kept, width(first, last), look);
        return this;
    }

    private static String cut(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) + " …" : text;
    }

    /** A number; absent is an empty cell. */
    public Page number(int column, @Nullable Number value, Look look) {
        if (value == null) {
            return blank(column, look);
        }
        cell(column, look).setCellValue(value.doubleValue());
        return growLine(look);
    }

    /** A date; absent is an empty cell. */
    public Page date(int column, @Nullable LocalDate date, Look look) {
        return number(column, date == null ? null : ChronoUnit.DAYS.between(DAY_ZERO, date), look);
    }

    /** A formula with the value that it has. */
    public Page formula(int column, String formula, double value, Look look) {
        SXSSFCell cell = cell(column, look);
        cell.setCellFormula(formula);
        cell.setCellValue(value);
        return growLine(look);
    }

    /** A formula with the exact value that it has. */
    public Page formula(int column, String formula, BigDecimal value, Look look) {
        return formula(column, formula, value.doubleValue(), look);
    }

    /** A formula with the text that it has. */
    public Page formula(int column, String formula, String text, Look look) {
        SXSSFCell cell = cell(column, look);
        cell.setCellFormula(formula);
        cell.setCellValue(text);
        grow(text, width(column, column), look);
        return this;
    }

    /** An empty cell that only shows its look. */
    public Page blank(int column, Look look) {
        cell(column, look);
        return growLine(look);
    }

    /** The width of columns, in points. */
    public double width(int first, int last) {
        double sum = -4; // the cell's own margins
        for (int column = first; column <= last && column < widthsPt.length; column++) {
            sum += widthsPt[column];
        }
        return sum;
    }

    private void grow(String text, double width, Look look) {
        int lines = look.wrap() ? TextWidth.lines(text, width, look.ink()) : 1;
        height(lines * look.ink().points * LEADING + ROW_PADDING);
    }

    private Page growLine(Look look) {
        return height(look.ink().points * LEADING + ROW_PADDING);
    }

    private SXSSFCell cell(int column, Look look) {
        SXSSFCell cell = cellOf(column);
        cell.setCellStyle(book.looks().style(look));
        return cell;
    }

    private SXSSFCell cellOf(int column) {
        SXSSFRow open = row;
        if (open == null) {
            throw new IllegalStateException("no row begun");
        }
        SXSSFCell known = open.getCell(column);
        return known == null ? open.createCell(column) : known;
    }
}
