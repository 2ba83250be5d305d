// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.workbook.WorkbookException;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/** Every line of every option, with live formulas for line, section, tax and total. */
public final class ItemsPage {
    private static final int LAST = 9;

    private final Sheets sheets;
    private final Page page;
    private final Look money;
    private final Look moneySum;
    private final List<Totals> totals = new ArrayList<>();

    /**
     * Where the totals of an option stand, as seen from any sheet.
     *
     * @param net sum without tax
     * @param tax tax
     * @param total sum with tax
     */
    public record Totals(String net, String tax, String total) {}

    /** The sheet's writer. */
    public ItemsPage(Sheets sheets, Page page) {
        this.sheets = sheets;
        this.page = page;
        this.money = Looking.LINE.format(sheets.formats().money());
        this.moneySum = Looking.SUM.format(sheets.formats().money());
    }

    /**
     * Writes it.
     *
     * @return where each option's totals stand
     * @throws WorkbookException if an amount is not what its formula gives
     */
    public List<Totals> write() throws WorkbookException {
        page.setup().landscape();
        page.columns(46, 9, 8, 12, 12, 11, 11, 12, 34, 26);
        sheets.head(page, "items", LAST);
        sheets.tableHead(page, "items", LAST + 1);
        page.setup().header(page.rowIndex(), page.rowIndex());
        int number = 0;
        for (QuoteOption option : sheets.quote().getOptions()) {
            writeOption(++number, option);
        }
        return List.copyOf(totals);
    }

    private void writeOption(int number, QuoteOption option) throws WorkbookException {
        String title = sheets.words()
                .get(
                        "option.title",
                        java.util.Map.of("number", String.valueOf(number), "title", text(option.getTitle())));
        page.gap(8);
        page.row().text(0, LAST, title, Looking.BAND);
        SumOfLines sum = new SumOfLines(sheets.formats().decimals(), title);
        List<Integer> sectionRows = new ArrayList<>();
        for (QuoteSection section : option.getSections()) {
            writeSection(section, sum, sectionRows);
        }
        sum.compare(option);
        page.row().text(0, sheets.words().get("items.total"), Looking.SUM.ink(Look.Ink.FIGURE));
        totals.add(sums(sectionRows, sum.net(), sum.tax(), moneySum.ink(Look.Ink.FIGURE)));
        for (String enquiry : option.getEnquiries()) {
            page.row().text(0, LAST, sheets.words().get("items.enquiry", "what", enquiry), Looking.MUTED);
        }
    }

    private void writeSection(QuoteSection section, SumOfLines option, List<Integer> sectionRows)
            throws WorkbookException {
        page.row().text(0, LAST, section.getTitle(), Looking.BOLD.single());
        SumOfLines sum = option.section(text(section.getTitle()));
        List<Integer> rows = new ArrayList<>();
        for (QuoteLine line : section.getLines()) {
            writeLine(line, sum);
            rows.add(page.rowIndex());
        }
        page.row().text(0, sheets.words().get("items.section", "section", text(section.getTitle())), Looking.SUM);
        sums(rows, sum.net(), sum.tax(), moneySum);
        sectionRows.add(page.rowIndex());
    }

    private void writeLine(QuoteLine line, SumOfLines sum) throws WorkbookException {
        LineAmount amount = sum.add(line);
        page.row().text(0, line.getDescription(), Looking.LINE);
        page.number(1, line.getQuantity(), Looking.LINE.format(Formats.QUANTITY));
        page.text(2, unit(line.getUnit()), Looking.LINE);
        if (amount.onEnquiry()) {
            String words = sheets.words().get("items.onEnquiry");
            page.text(3, words, Looking.LINE.side(Look.Side.RIGHT));
            for (int column = 4; column <= 7; column++) {
                page.blank(column, Looking.LINE);
            }
        } else {
            writeAmounts(line, amount);
        }
        page.text(8, line.getSource(), Looking.LINE_MUTED).text(9, line.getNote(), Looking.LINE_MUTED);
    }

    private void writeAmounts(QuoteLine line, LineAmount amount) {
        int decimals = sheets.formats().decimals();
        page.number(3, line.getUnitPrice(), money);
        page.formula(4, "ROUND(" + page.address(1) + "*" + page.address(3) + "," + decimals + ")", amount.net(), money);
        if (amount.taxed()) {
            page.number(5, line.getTaxRate(), Looking.LINE.format(Formats.PERCENT));
            page.formula(
                    6, "ROUND(" + page.address(4) + "*" + page.address(5) + "," + decimals + ")", amount.tax(), money);
        } else {
            String key = "tax." + (line.getTaxClass() == null ? "outside" : line.getTaxClass());
            String words = sheets.words().find(key);
            page.text(5, words == null ? line.getTaxClass() : words, Looking.LINE.side(Look.Side.RIGHT));
            page.number(6, BigDecimal.ZERO, money);
        }
        page.formula(7, page.address(4) + "+" + page.address(6), amount.net().add(amount.tax()), money);
    }

    private Totals sums(List<Integer> rows, BigDecimal net, BigDecimal tax, Look look) {
        for (int column = 1; column <= LAST; column++) {
            page.blank(column, Looking.SUM);
        }
        page.formula(4, sum(rows, "E"), net, look);
        page.formula(6, sum(rows, "G"), tax, look);
        page.formula(7, page.address(4) + "+" + page.address(6), net.add(tax), look);
        return new Totals(page.fullAddress(4), page.fullAddress(6), page.fullAddress(7));
    }

    /** A range where the rows follow one another, otherwise the rows one by one; nothing is 0. */
    private static String sum(List<Integer> rows, String column) {
        if (rows.isEmpty()) {
            return "0";
        }
        int first = rows.get(0);
        int last = rows.get(rows.size() - 1);
        if (last - first == rows.size() - 1) {
            return "SUM(" + column + (first + 1) + ":" + column + (last + 1) + ")";
        }
        List<String> cells = rows.stream().map(row -> column + (row + 1)).toList();
        return String.join("+", cells);
    }

    private String unit(@org.jspecify.annotations.Nullable String unit) {
        String words = unit == null ? null : sheets.words().find("unit." + unit);
        return words == null ? text(unit) : words;
    }

    private static String text(@org.jspecify.annotations.Nullable String text) {
        return text == null ? "" : text;
    }
}
