// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import twinfeed.model.quote.QuoteOption;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.text.WorkbookException;
import twinfeed.workbook.writer.SheetWriter;

/** Every line of every option, with live formulas for line, section, tax and total. */
public final class ItemsSheet {
    private final QuoteSheets sheets;
    private final SheetWriter page;

    /**
     * Where the totals of an option stand, as seen from any sheet.
     *
     * @param net sum without tax
     * @param tax tax
     * @param total sum with tax
     * @param payments stage payments
     */
    public record Totals(String net, String tax, String total, List<String> payments) {}

    /** The sheet's writer. */
    public ItemsSheet(QuoteSheets sheets, SheetWriter page) {
        this.sheets = sheets;
        this.page = page;
    }

    /**
     * Writes it.
     *
     * @return where each option's totals stand
     * @throws WorkbookException if an amount is not what its formula gives
     */
    public List<Totals> write() throws WorkbookException {
        page.setup().pages(2);
        page.columns(44, 9, 11, 11.5, 12, 15, 8, 11, 12.5, 62, 44);
        sheets.head(page, "items", ItemColumns.PRINTED);
        sheets.tableHead(page, "items", ItemColumns.LAST + 1, ItemColumns.NUMERIC);
        page.setup().header(page.rowIndex(), page.rowIndex());
        LineAmount.TaxRounding rounding = LineAmount.TaxRounding.of(
                sheets.quote().getRounding(), sheets.formats().decimals());
        List<Totals> totals = new ArrayList<>();
        for (QuoteOption option : sheets.quote().getOptions()) {
            page.gap(8);
            String title = sheets.words()
                    .get("option.title", Map.of("number", String.valueOf(totals.size() + 1), "title", title(option)));
            totals.add(new OptionItems(sheets, page, rounding, title).write(option));
        }
        page.setup().printOnly(page.rowIndex(), ItemColumns.PRINTED);
        return List.copyOf(totals);
    }

    private static String title(QuoteOption option) {
        return option.getTitle() == null ? String.valueOf(option.getHeaterId()) : option.getTitle();
    }
}
