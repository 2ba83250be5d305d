// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import twinfeed.document.QuoteLetter.PriceLine;
import twinfeed.document.QuoteLetter.PriceTable;

/** What the price is made of: a row for each line, a column of amounts for each option. */
final class PriceLinesTable {
    private static final int AMOUNT_SHARE = 13;

    private final PageBody sheet;
    private final FoWriter fo;
    private final PriceTable table;

    PriceLinesTable(PageBody sheet, PriceTable table) {
        this.sheet = sheet;
        this.fo = sheet.fo();
        this.table = table;
    }

    void write() {
        sheet.heading(table.title());
        fo.in(
                "table",
                () -> {
                    int options = table.heads().size();
                    fo.empty("table-column", "column-width", share(100 - AMOUNT_SHARE * options));
                    table.heads().forEach(head -> fo.empty("table-column", "column-width", share(AMOUNT_SHARE)));
                    fo.in("table-header", () -> fo.in("table-row", this::heads));
                    fo.in("table-body", () -> table.lines().forEach(this::row));
                },
                "table-layout",
                "fixed",
                "width",
                "100%",
                "font-size",
                sheet.letters(0.85));
    }

    private static String share(int share) {
        return "proportional-column-width(" + share + ")";
    }

    private void heads() {
        cell("", false, "background-color", sheet.accent());
        table.heads()
                .forEach(head -> cell(
                        head,
                        false,
                        "background-color",
                        sheet.accent(),
                        "color",
                        "#FFFFFF",
                        "font-weight",
                        "bold",
                        "text-align",
                        "end"));
    }

    private void row(PriceLine line) {
        boolean last = line.role() == PriceLine.Role.TOTAL;
        fo.in(
                "table-row",
                () -> {
                    cell(line.what(), true, "font-weight", weight(line.role()));
                    for (int at = 0; at < table.heads().size(); at++) {
                        String amount =
                                at < line.amounts().size() ? line.amounts().get(at) : "";
                        cell(amount, false, "text-align", "end", "font-weight", last ? "bold" : "normal");
                    }
                },
                "border-bottom",
                line.role() == PriceLine.Role.SECTION ? "none" : PageBody.rule(),
                "background-color",
                last ? sheet.soft() : "transparent",
                "keep-together.within-page",
                "always",
                "keep-with-next.within-page",
                line.role() == PriceLine.Role.SECTION ? "always" : "auto");
    }

    private static String weight(PriceLine.Role role) {
        return switch (role) {
            case SECTION, TOTAL -> "bold";
            case LINE, SUM -> "normal";
        };
    }

    private void cell(String text, boolean head, String... attributes) {
        String[] padded = PageBody.joined(attributes, "padding", sheet.space(0.08) + " " + sheet.space(0.3));
        fo.in("table-cell", () -> fo.block(text), head ? PageBody.joined(padded, "fox:header", "true") : padded);
    }
}
