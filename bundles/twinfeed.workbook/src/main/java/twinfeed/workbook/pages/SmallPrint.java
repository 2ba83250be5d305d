// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import twinfeed.model.quote.Quote;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;
import twinfeed.workbook.book.TextWidth;

/**
 * Cautions, what is not included, assumptions and terms, as many as the page holds. Cautions are never cut; of the rest what does not
 * fit is counted and stands in full on the sheet of sources.
 */
final class SmallPrint {
    private static final double LINE_PT = 8 * 1.27;
    private static final double PADDING_PT = 3;
    private static final double HEADING_PT = LINE_PT + PADDING_PT;

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
        List<Part> parts = Stream.of(
                        new Part("quote.assumptions", quote.getAssumptions()),
                        new Part("quote.exclusions", quote.getExclusions()),
                        new Part("quote.terms", quote.getTerms()))
                .filter(part -> !part.entries().isEmpty())
                .toList();
        for (int at = 0; at < parts.size(); at++) {
            // Each part leaves those that follow it their share of what is left.
            double share = left / (parts.size() - at);
            double wanted = height(parts.get(at).entries()) + HEADING_PT;
            double others = parts.subList(at + 1, parts.size()).stream()
                    .mapToDouble(part -> height(part.entries()) + HEADING_PT)
                    .sum();
            double most = Math.max(share, left - others);
            left -= block(parts.get(at).key(), parts.get(at).entries(), Math.min(wanted, most));
        }
    }

    private record Part(String key, List<String> entries) {}

    private double height(List<String> entries) {
        return height(text(entries, entries.size()));
    }

    private double height(String text) {
        return TextWidth.lines(text, width, Look.Ink.SMALL) * LINE_PT + PADDING_PT;
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
            if (height(text) <= height) {
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
