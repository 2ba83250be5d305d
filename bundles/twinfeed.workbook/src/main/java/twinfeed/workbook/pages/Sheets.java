// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.io.IOException;
import java.util.Map;
import java.util.Set;
import twinfeed.model.quote.Quote;
import twinfeed.workbook.QuoteDocument;
import twinfeed.workbook.book.Book;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/**
 * What the sheets of one quote's workbook have in common.
 *
 * @param document what is written
 * @param book the book
 * @param words texts
 * @param formats number formats
 */
public record Sheets(QuoteDocument document, Book book, Words words, Formats formats) {
    /** The common things of a document's book. */
    public static Sheets of(QuoteDocument document, Book book) {
        Words words = new Words(document.locale());
        return new Sheets(
                document, book, words, new Formats(words, document.quote().getCurrency()));
    }

    /** The quote. */
    Quote quote() {
        return document.quote();
    }

    /** What the quote is called: its number and revision, or a draft. */
    public String reference() {
        Quote quote = quote();
        return quote.getNumber() == null
                ? words.get("quote.draft")
                : words.get(
                        quote.getRevision() > 1 ? "quote.revised" : "quote.number",
                        Map.of("number", quote.getNumber(), "revision", String.valueOf(quote.getRevision())));
    }

    /** A new sheet with its foot. */
    public Page sheet(String key) throws IOException {
        Page page = book.page(words.get("sheet." + key));
        page.setup().footer(foot(), words.get("foot.page"));
        return page;
    }

    private String foot() {
        String firm = document.firm().name();
        return firm.isEmpty() ? reference() : firm + " · " + reference();
    }

    /** Writes a sheet's title and what it is for, over all its columns. */
    void head(Page page, String key, int lastColumn) {
        page.row().text(0, lastColumn, words.get("sheet." + key + ".title", "reference", reference()), Looking.TITLE);
        page.row().text(0, lastColumn, words.get("sheet." + key + ".note"), Looking.MUTED);
        page.gap(6);
    }

    /** Writes a table's head from {@code head.KEY.0} on; heads of figures stand at the right as the figures do. */
    void tableHead(Page page, String key, int columns, Set<Integer> numeric) {
        page.row();
        for (int column = 0; column < columns; column++) {
            Look look = numeric.contains(column) ? Looking.HEAD.side(Look.Side.RIGHT) : Looking.HEAD;
            page.text(column, words.get("head." + key + "." + column), look);
        }
    }
}
