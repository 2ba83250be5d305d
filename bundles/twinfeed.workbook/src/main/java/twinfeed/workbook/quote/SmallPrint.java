// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.util.ArrayList;
import java.util.List;
import twinfeed.document.DocumentTexts;
import twinfeed.document.QuoteLetter.Part;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;
import twinfeed.workbook.writer.TextWidth;

/**
 * Cautions, what is not included, assumptions and terms, as many as the page holds. Cautions are never cut; of the rest what does not
 * fit is counted and stands in full on the sheet of sources.
 */
final class SmallPrint {
    private static final double LINE_PT = 8 * 1.27;
    private static final double PADDING_PT = 3;
    private static final double HEADING_PT = LINE_PT + PADDING_PT;

    private final DocumentTexts words;
    private final SheetWriter page;
    private final double width;

    SmallPrint(DocumentTexts words, SheetWriter page) {
        this.words = words;
        this.page = page;
        this.width = page.width(0, QuoteSheet.LAST);
    }

    /**
     * Writes it.
     *
     * @param smallPrint its parts
     * @param height what is left of the page, in points
     */
    void write(List<Part> smallPrint, double height) {
        double left = height;
        for (Part part : smallPrint) {
            left -= part.whole() ? block(part, Double.MAX_VALUE) : 0;
        }
        List<Part> parts = smallPrint.stream().filter(part -> !part.whole()).toList();
        for (int at = 0; at < parts.size(); at++) {
            // Each part leaves those that follow it their share of what is left.
            double share = left / (parts.size() - at);
            double wanted = height(parts.get(at).entries()) + HEADING_PT;
            double others = parts.subList(at + 1, parts.size()).stream()
                    .mapToDouble(part -> height(part.entries()) + HEADING_PT)
                    .sum();
            double most = Math.max(share, left - others);
            left -= block(parts.get(at), Math.min(wanted, most));
        }
    }

    private double height(List<String> entries) {
        return height(text(entries, entries.size()));
    }

    private double height(String text) {
        return TextWidth.lines(text, width, CellStyle.Lettering.SMALL) * LINE_PT + PADDING_PT;
    }

    /** One paragraph under a heading; returns the height taken. */
    private double block(Part part, double height) {
        double before = page.heightSum();
        page.row().text(0, QuoteSheet.LAST, part.title(), SheetStyles.BODY.lettering(CellStyle.Lettering.SMALL_BOLD));
        String text = fitting(part.entries(), height - (page.heightSum() - before));
        page.row()
                .text(
                        0,
                        QuoteSheet.LAST,
                        text,
                        part.whole() ? SheetStyles.SMALL.fill(CellStyle.Fill.DOUBT) : SheetStyles.SMALL);
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
            shown.add(words.get("quote.more", "count", String.valueOf(entries.size() - count)));
        }
        return String.join("  ·  ", shown);
    }
}
