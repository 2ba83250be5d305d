// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import twinfeed.calculator.Texts;
import twinfeed.document.Letter;
import twinfeed.document.QuoteDocument;
import twinfeed.document.Words;
import twinfeed.model.quote.Quote;
import twinfeed.workbook.QuoteWorkbook;
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
    private static final Texts TEXTS = new Texts(QuoteWorkbook.class, "Workbook");

    /** The common things of a document's book. */
    public static Sheets of(QuoteDocument document, Book book) {
        Words words = words(document.locale());
        return new Sheets(
                document, book, words, new Formats(words, document.quote().getCurrency()));
    }

    /** The quote. */
    Quote quote() {
        return document.quote();
    }

    /** The texts of workbooks in a language. */
    static Words words(Locale locale) {
        return new Words(locale, TEXTS);
    }

    /** The quote in words. */
    Letter letter() {
        return new Letter(document, words);
    }

    /** What the quote is called: its number and revision, or a draft. */
    public String reference() {
        return letter().reference();
    }

    /** A new sheet with its foot. */
    public Page sheet(String key) throws IOException {
        Page page = book.page(words.get("sheet." + key));
        page.setup().footer(letter().foot(), words.get("foot.page"));
        return page;
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
