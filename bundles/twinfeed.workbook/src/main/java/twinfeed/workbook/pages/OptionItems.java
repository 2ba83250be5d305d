// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Words;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.workbook.WorkbookException;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/** The lines of one option: section by section, tax by class and rate, total, stage payments. */
final class OptionItems {
    private final Sheets sheets;
    private final Page page;
    private final Words words;
    private final LineAmount.TaxRounding rounding;
    private final String title;
    private final Look money;
    private final Look moneySum;
    private int firstRow;
    private int lastRow;

    OptionItems(Sheets sheets, Page page, LineAmount.TaxRounding rounding, String title) {
        this.sheets = sheets;
        this.page = page;
        this.words = sheets.words();
        this.rounding = rounding;
        this.title = title;
        this.money = Looking.LINE.format(sheets.formats().money());
        this.moneySum = Looking.SUM.format(sheets.formats().money());
    }

    ItemsPage.Totals write(QuoteOption option) throws WorkbookException {
        page.row().text(0, ItemColumns.LAST, title, Looking.BAND);
        SumOfLines sum = new SumOfLines(rounding, title);
        firstRow = page.rowIndex() + 1;
        List<Integer> sectionRows = new ArrayList<>();
        for (QuoteSection section : option.getSections()) {
            writeSection(section, sum, sectionRows);
        }
        lastRow = page.rowIndex();
        sum.compare(option);
        List<Integer> taxRows = new ArrayList<>();
        for (SumOfLines.Group group : sum.groups()) {
            writeTax(group, TaxLabel.of(option, group, words));
            taxRows.add(page.rowIndex());
        }
        ItemsPage.Totals totals = writeTotal(sum, sectionRows, taxRows, option);
        for (String enquiry : option.getEnquiries()) {
            page.row().text(0, ItemColumns.LAST, words.get("items.enquiry", "what", enquiry), Looking.MUTED);
        }
        return totals;
    }

    private void writeSection(QuoteSection section, SumOfLines option, List<Integer> sectionRows)
            throws WorkbookException {
        String name = section.getTitle() == null ? "" : section.getTitle();
        page.row().text(0, ItemColumns.LAST, name, Looking.BOLD.single());
        SumOfLines sum = option.section(name);
        List<Integer> rows = new ArrayList<>();
        for (QuoteLine line : section.getLines()) {
            writeLine(line, sum.add(line));
            rows.add(page.rowIndex());
        }
        sumRow(words.get("items.section", "section", name));
        page.formula(ItemColumns.NET, Ranges.sum(ItemColumns.NET, rows), sum.net(), moneySum);
        if (rounding.byLine()) {
            page.formula(ItemColumns.TAX, Ranges.sum(ItemColumns.TAX, rows), sum.lineTax(), moneySum);
            gross(sum.net().add(sum.lineTax()), moneySum);
        }
        sectionRows.add(page.rowIndex());
    }

    private void writeLine(QuoteLine line, LineAmount amount) {
        page.row().text(ItemColumns.WHAT, line.getDescription(), Looking.LINE);
        page.number(ItemColumns.QUANTITY, line.getQuantity(), Looking.LINE.format(Formats.QUANTITY));
        page.text(ItemColumns.UNIT, unit(line.getUnit()), Looking.LINE);
        for (int column = ItemColumns.PRICE; column <= ItemColumns.GROSS; column++) {
            page.blank(column, Looking.LINE);
        }
        if (amount.onEnquiry()) {
            page.text(ItemColumns.PRICE, words.get("items.onEnquiry"), Looking.LINE.side(Look.Side.RIGHT));
        } else {
            writeAmounts(line, amount);
        }
        page.text(ItemColumns.SOURCE, line.getSource(), Looking.LINE_MUTED);
        page.text(ItemColumns.NOTE, line.getNote(), Looking.LINE_MUTED);
    }

    private void writeAmounts(QuoteLine line, LineAmount amount) {
        page.number(ItemColumns.PRICE, line.getUnitPrice(), money);
        page.formula(ItemColumns.NET, rounded(ItemColumns.QUANTITY, ItemColumns.PRICE), amount.net(), money);
        page.text(ItemColumns.CLASS, taxWord(amount.taxClass()), Looking.LINE);
        page.number(ItemColumns.RATE, amount.rate(), Looking.LINE.format(Formats.PERCENT));
        if (rounding.byLine()) {
            page.formula(ItemColumns.TAX, rounded(ItemColumns.NET, ItemColumns.RATE), amount.tax(), money);
            gross(amount.net().add(amount.tax()), money);
        }
    }

    /** Net and tax of the lines of one class and rate, found by their class and rate. */
    private void writeTax(SumOfLines.Group group, String label) {
        page.row().text(ItemColumns.WHAT, label, Looking.LINE);
        for (int column = 1; column <= ItemColumns.LAST; column++) {
            page.blank(column, Looking.LINE);
        }
        page.text(ItemColumns.CLASS, taxWord(group.taxClass()), Looking.LINE);
        page.number(ItemColumns.RATE, group.rate(), Looking.LINE.format(Formats.PERCENT));
        page.formula(ItemColumns.NET, byGroup(ItemColumns.NET), group.net(), money);
        String tax = rounding.byLine() ? byGroup(ItemColumns.TAX) : rounded(ItemColumns.NET, ItemColumns.RATE);
        page.formula(ItemColumns.TAX, tax, group.tax(), money);
        gross(group.net().add(group.tax()), money);
    }

    private String byGroup(int column) {
        return "SUMIFS(" + Ranges.of(column, firstRow, lastRow) + "," + Ranges.of(ItemColumns.CLASS, firstRow, lastRow)
                + ","
                + page.address(ItemColumns.CLASS) + "," + Ranges.of(ItemColumns.RATE, firstRow, lastRow) + ","
                + page.address(ItemColumns.RATE) + ")";
    }

    private ItemsPage.Totals writeTotal(
            SumOfLines sum, List<Integer> sectionRows, List<Integer> taxRows, QuoteOption option) {
        sumRow(words.get("items.total"));
        Look figure = moneySum.ink(Look.Ink.FIGURE);
        page.formula(ItemColumns.NET, Ranges.sum(ItemColumns.NET, sectionRows), sum.net(), figure);
        page.formula(ItemColumns.TAX, Ranges.sum(ItemColumns.TAX, taxRows), sum.tax(), figure);
        BigDecimal total = sum.net().add(sum.tax());
        gross(total, figure);
        String net = page.fullAddress(ItemColumns.NET);
        String tax = page.fullAddress(ItemColumns.TAX);
        String gross = page.fullAddress(ItemColumns.GROSS);
        String totalCell = page.address(ItemColumns.GROSS);
        List<String> payments = new PaymentRows(page, rounding, money).write(option.getPayments(), totalCell, total);
        return new ItemsPage.Totals(net, tax, gross, payments);
    }

    private void sumRow(String label) {
        page.row();
        for (int column = 1; column <= ItemColumns.LAST; column++) {
            page.blank(column, Looking.SUM);
        }
        page.text(ItemColumns.WHAT, label, Looking.SUM);
    }

    private void gross(BigDecimal value, Look look) {
        String formula = page.address(ItemColumns.NET) + "+" + page.address(ItemColumns.TAX);
        page.formula(ItemColumns.GROSS, formula, value, look);
    }

    private String rounded(int left, int right) {
        return "ROUND(" + page.address(left) + "*" + page.address(right) + "," + rounding.decimals() + ")";
    }

    private String taxWord(String taxClass) {
        String found = words.find("tax." + taxClass);
        return found == null ? taxClass : found;
    }

    private String unit(@Nullable String unit) {
        String found = unit == null ? null : words.find("unit." + unit);
        return found == null ? String.valueOf(unit == null ? "" : unit) : found;
    }
}
