// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/** Where the customer accepts. */
final class AcceptanceBox {
    /** What it takes of the page, in points. */
    static final double HEIGHT = 96;

    private static final Look BOX = Looking.BODY.edge(Look.Edge.BOX);

    private final Sheets sheets;
    private final Page page;

    AcceptanceBox(Sheets sheets, Page page) {
        this.sheets = sheets;
        this.page = page;
    }

    void write() {
        Words words = sheets.words();
        page.gap(6);
        page.row().text(0, QuotePage.LAST, words.get("accept.title"), Looking.HEADING);
        StringBuilder choice = new StringBuilder(words.get("accept.choice"));
        for (int number = 1; number <= sheets.quote().getOptions().size(); number++) {
            choice.append("   ☐ ").append(words.get("option.number", "number", String.valueOf(number)));
        }
        page.row().text(0, QuotePage.LAST, choice.toString(), Looking.BODY);
        page.row().height(30);
        field(0, 6, words.get("accept.name"));
        field(7, 12, words.get("accept.signature"));
        field(13, QuotePage.LAST, words.get("accept.date"));
    }

    private void field(int first, int last, String label) {
        page.text(first, last, label, BOX.ink(Look.Ink.SMALL));
    }
}
