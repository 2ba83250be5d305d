// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentTexts;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.workbook.sheet.CellRanges;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.text.WorkbookException;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** The lines of one option: section by section, tax by class and rate, total, stage payments. */
final class OptionItems {
    /** Code of the line that is a share of others. */
    private static final String CONTINGENCY = "contingency";

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final DocumentTexts words;
    private final LineAmount.TaxRounding rounding;
    private final String title;
    private final CellStyle money;
    private final CellStyle moneySum;
    private int firstRow;
    private int lastRow;

    OptionItems(QuoteSheets sheets, SheetWriter page, LineAmount.TaxRounding rounding, String title) {
        this.sheets = sheets;
        this.page = page;
        this.words = sheets.words();
        this.rounding = rounding;
        this.title = title;
        this.money = SheetStyles.LINE.format(sheets.formats().money());
        this.moneySum = SheetStyles.SUM.format(sheets.formats().money());
    }

    ItemsSheet.Totals write(QuoteOption option) throws WorkbookException {
        page.row().text(0, ItemColumns.PRINTED, title, SheetStyles.BAND);
        LineTotals sum = new LineTotals(rounding, title);
        firstRow = page.rowIndex() + 1;
        List<Integer> sectionRows = new ArrayList<>();
        for (QuoteSection section : option.getSections()) {
            writeSection(section, sum, sectionRows);
        }
        lastRow = page.rowIndex();
        sum.compare(option);
        List<Integer> taxRows = new ArrayList<>();
        for (LineTotals.Group group : sum.groups()) {
            writeTax(group, TaxLabel.of(option, group, words));
            taxRows.add(page.rowIndex());
        }
        ItemsSheet.Totals totals = writeTotal(sum, sectionRows, taxRows, option);
        for (String enquiry : option.getEnquiries()) {
            page.row().text(0, ItemColumns.PRINTED, words.get("items.enquiry", "what", enquiry), SheetStyles.MUTED);
        }
        return totals;
    }

    private void writeSection(QuoteSection section, LineTotals option, List<Integer> sectionRows)
            throws WorkbookException {
        String name = section.getTitle() == null ? "" : section.getTitle();
        page.row().text(0, ItemColumns.PRINTED, name, SheetStyles.BOLD.single());
        LineTotals sum = option.section(name);
        List<Integer> rows = new ArrayList<>();
        for (QuoteLine line : section.getLines()) {
            writeLine(line, sum.add(line));
            rows.add(page.rowIndex());
        }
        sumRow(words.get("items.section", "section", name));
        page.formula(ItemColumns.NET, CellRanges.sum(ItemColumns.NET, rows), sum.net(), moneySum);
        if (rounding.byLine()) {
            page.formula(ItemColumns.TAX, CellRanges.sum(ItemColumns.TAX, rows), sum.lineTax(), moneySum);
            gross(sum.net().add(sum.lineTax()), moneySum);
        }
        sectionRows.add(page.rowIndex());
    }

    private void writeLine(QuoteLine line, LineAmount amount) {
        page.row().text(ItemColumns.WHAT, line.getDescription(), SheetStyles.LINE);
        boolean share = CONTINGENCY.equals(line.getCode());
        String format = share ? NumberFormats.PERCENT : NumberFormats.QUANTITY;
        page.number(ItemColumns.QUANTITY, line.getQuantity(), SheetStyles.LINE.format(format));
        page.text(ItemColumns.UNIT, share ? "" : unitOf(line), SheetStyles.LINE);
        for (int column = ItemColumns.PRICE; column <= ItemColumns.GROSS; column++) {
            page.blank(column, SheetStyles.LINE);
        }
        if (amount.onEnquiry()) {
            page.text(
                    ItemColumns.PRICE, words.get("items.onEnquiry"), SheetStyles.LINE.align(CellStyle.Alignment.RIGHT));
        } else {
            writeAmounts(line, amount);
        }
        page.text(ItemColumns.SOURCE, line.getSource(), SheetStyles.LINE_MUTED);
        page.text(ItemColumns.NOTE, line.getNote(), SheetStyles.LINE_MUTED);
    }

    /** Hours are also said in minutes: 0.8333 h are what everybody calls 50 min. */
    private String unitOf(QuoteLine line) {
        String unit = unit(line.getUnit());
        boolean hours = unit.equals(words.get("unit.h")) && line.getQuantity() != null;
        if (!hours) {
            return unit;
        }
        BigDecimal minutes = line.getQuantity().multiply(BigDecimal.valueOf(60)).setScale(0, RoundingMode.HALF_UP);
        return words.get("unit.hours", Map.of("unit", unit, "minutes", minutes.toPlainString()));
    }

    private void writeAmounts(QuoteLine line, LineAmount amount) {
        page.number(ItemColumns.PRICE, line.getUnitPrice(), money);
        page.formula(ItemColumns.NET, rounded(ItemColumns.QUANTITY, ItemColumns.PRICE), amount.net(), money);
        page.text(ItemColumns.CLASS, taxWord(amount.taxClass()), SheetStyles.LINE);
        page.number(ItemColumns.RATE, amount.rate(), SheetStyles.LINE.format(NumberFormats.PERCENT));
        if (rounding.byLine()) {
            page.formula(ItemColumns.TAX, rounded(ItemColumns.NET, ItemColumns.RATE), amount.tax(), money);
            gross(amount.net().add(amount.tax()), money);
        }
    }

    /** Net and tax of the lines of one class and rate, found by their class and rate. */
    private void writeTax(LineTotals.Group group, String label) {
        page.row().text(ItemColumns.WHAT, label, SheetStyles.LINE);
        for (int column = 1; column <= ItemColumns.LAST; column++) {
            page.blank(column, SheetStyles.LINE);
        }
        page.text(ItemColumns.CLASS, taxWord(group.taxClass()), SheetStyles.LINE);
        page.number(ItemColumns.RATE, group.rate(), SheetStyles.LINE.format(NumberFormats.PERCENT));
        page.formula(ItemColumns.NET, byGroup(ItemColumns.NET), group.net(), money);
        String tax = rounding.byLine() ? byGroup(ItemColumns.TAX) : rounded(ItemColumns.NET, ItemColumns.RATE);
        page.formula(ItemColumns.TAX, tax, group.tax(), money);
        gross(group.net().add(group.tax()), money);
    }

    private String byGroup(int column) {
        return "SUMIFS(" + CellRanges.of(column, firstRow, lastRow) + ","
                + CellRanges.of(ItemColumns.CLASS, firstRow, lastRow)
                + ","
                + page.address(ItemColumns.CLASS) + "," + CellRanges.of(ItemColumns.RATE, firstRow, lastRow) + ","
                + page.address(ItemColumns.RATE) + ")";
    }

    private ItemsSheet.Totals writeTotal(
            LineTotals sum, List<Integer> sectionRows, List<Integer> taxRows, QuoteOption option) {
        sumRow(words.get("items.total"));
        CellStyle figure = moneySum.lettering(CellStyle.Lettering.FIGURE);
        page.formula(ItemColumns.NET, CellRanges.sum(ItemColumns.NET, sectionRows), sum.net(), figure);
        page.formula(ItemColumns.TAX, CellRanges.sum(ItemColumns.TAX, taxRows), sum.tax(), figure);
        BigDecimal total = sum.net().add(sum.tax());
        gross(total, figure);
        String net = page.fullAddress(ItemColumns.NET);
        String tax = page.fullAddress(ItemColumns.TAX);
        String gross = page.fullAddress(ItemColumns.GROSS);
        String totalCell = page.address(ItemColumns.GROSS);
        List<String> payments = new PaymentRows(page, rounding, money).write(option.getPayments(), totalCell, total);
        return new ItemsSheet.Totals(net, tax, gross, payments);
    }

    private void sumRow(String label) {
        page.row();
        for (int column = 1; column <= ItemColumns.LAST; column++) {
            page.blank(column, SheetStyles.SUM);
        }
        page.text(ItemColumns.WHAT, label, SheetStyles.SUM);
    }

    private void gross(BigDecimal value, CellStyle look) {
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
