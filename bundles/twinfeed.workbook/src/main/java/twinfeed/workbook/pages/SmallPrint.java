// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.util.ArrayList;
import java.util.List;
import twinfeed.model.quote.Quote;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;
import twinfeed.workbook.book.TextWidth;

/**
 * Cautions, what is not included, assumptions and terms, as many as the page holds. Cautions are never cut; of the rest what does not
 * fit is counted and stands in full on the sheet of sources.
 */
final class SmallPrint {
    private final Sheets sheets;
    private final Page page;
    private final double width;

    SmallPrint(Sheets sheets, Page page) {
        this.sheets = sheets;
        this.page = page;
        this.width = page.width(0, QuotePage.LAST);
    }

    /**
     * Writes it.
     *
     * @param height what is left of the page, in points
     */
    void write(double height) {
        Quote quote = sheets.quote();
        double left = height - block("quote.cautions", quote.getCautions(), Double.MAX_VALUE);
        left -= block("quote.exclusions", quote.getExclusions(), left / 2);
        left -= block("quote.terms", quote.getTerms(), left * 0.6);
        block("quote.assumptions", quote.getAssumptions(), left);
    }

    /** One paragraph under a heading; returns the height taken. */
    private double block(String key, List<String> entries, double height) {
        if (entries.isEmpty()) {
            return 0;
        }
        double before = page.heightSum();
        page.row().text(0, QuotePage.LAST, sheets.words().get(key), Looking.BODY.ink(Look.Ink.SMALL_BOLD));
        String text = fitting(entries, height - (page.heightSum() - before));
        page.row().text(0, QuotePage.LAST, text, Looking.SMALL);
        return page.heightSum() - before;
    }

    private String fitting(List<String> entries, double height) {
        for (int count = entries.size(); count > 1; count--) {
            String text = text(entries, count);
            if (TextWidth.lines(text, width, Look.Ink.SMALL) * 8 * 1.27 + 3 <= height) {
                return text;
            }
        }
        return text(entries, 1);
    }

    private String text(List<String> entries, int count) {
        List<String> shown = new ArrayList<>(entries.subList(0, count));
        if (count < entries.size()) {
            shown.add(sheets.words().get("quote.more", "count", String.valueOf(entries.size() - count)));
        }
        return String.join("  ·  ", shown);
    }
}
