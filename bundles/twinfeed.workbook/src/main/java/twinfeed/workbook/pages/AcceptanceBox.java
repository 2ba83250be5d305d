// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import twinfeed.document.QuoteLetter;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/** Where the customer accepts. */
final class AcceptanceBox {
    /** What it takes of the page, in points. */
    static final double HEIGHT = 96;

    private static final Look BOX = Looking.BODY.edge(Look.Edge.BOX);

    private final Page page;
    private final QuoteLetter.Acceptance acceptance;

    AcceptanceBox(Page page, QuoteLetter.Acceptance acceptance) {
        this.page = page;
        this.acceptance = acceptance;
    }

    void write() {
        page.gap(6);
        page.row().text(0, QuotePage.LAST, acceptance.title(), Looking.HEADING);
        StringBuilder choice = new StringBuilder(acceptance.choice());
        acceptance.options().forEach(option -> choice.append("   ☐ ").append(option));
        page.row().text(0, QuotePage.LAST, choice.toString(), Looking.BODY);
        page.row().height(30);
        field(0, 6, acceptance.fields().get(0));
        field(7, 12, acceptance.fields().get(1));
        field(13, QuotePage.LAST, acceptance.fields().get(2));
    }

    private void field(int first, int last, String label) {
        page.text(first, last, label, BOX.ink(Look.Ink.SMALL));
    }
}
