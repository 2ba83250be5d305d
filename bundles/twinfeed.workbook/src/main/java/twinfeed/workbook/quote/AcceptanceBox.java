// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import twinfeed.document.QuoteLetter;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** Where the customer accepts. */
final class AcceptanceBox {
    private static final CellStyle BOX = SheetStyles.BODY.border(CellStyle.Border.BOX);

    private final SheetWriter page;
    private final QuoteLetter.Acceptance acceptance;

    AcceptanceBox(SheetWriter page, QuoteLetter.Acceptance acceptance) {
        this.page = page;
        this.acceptance = acceptance;
    }

    void write() {
        page.gap(6);
        page.row().text(0, QuoteSheet.LAST, acceptance.title(), SheetStyles.HEADING);
        StringBuilder choice = new StringBuilder(acceptance.choice());
        acceptance.options().forEach(option -> choice.append("   ☐ ").append(option));
        page.row().text(0, QuoteSheet.LAST, choice.toString(), SheetStyles.BODY);
        page.row().height(30);
        field(0, 6, acceptance.fields().get(0));
        field(7, 12, acceptance.fields().get(1));
        field(13, QuoteSheet.LAST, acceptance.fields().get(2));
    }

    private void field(int first, int last, String label) {
        page.text(first, last, label, BOX.lettering(CellStyle.Lettering.SMALL));
    }
}
