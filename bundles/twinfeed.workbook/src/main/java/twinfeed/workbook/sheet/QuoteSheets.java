// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.sheet;

import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import twinfeed.document.DocumentTexts;
import twinfeed.document.QuoteDocument;
import twinfeed.document.QuoteLetterWriter;
import twinfeed.model.quote.Quote;
import twinfeed.workbook.text.WorkbookTexts;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;
import twinfeed.workbook.writer.WorkbookWriter;

/**
 * What the sheets of one quote's workbook have in common.
 *
 * @param document what is written
 * @param book the book
 * @param words texts
 * @param formats number formats
 */
public record QuoteSheets(QuoteDocument document, WorkbookWriter book, DocumentTexts words, NumberFormats formats) {

    /** The common things of a document's book. */
    public static QuoteSheets of(QuoteDocument document, WorkbookWriter book) {
        DocumentTexts words = words(document.locale());
        return new QuoteSheets(
                document, book, words, new NumberFormats(words, document.quote().getCurrency()));
    }

    /** The quote. */
    public Quote quote() {
        return document.quote();
    }

    /** The texts of workbooks in a language. */
    public static DocumentTexts words(Locale locale) {
        return new DocumentTexts(locale, WorkbookTexts.SHEETS);
    }

    /** The quote in words. */
    public QuoteLetterWriter letter() {
        return new QuoteLetterWriter(document, words);
    }

    /** What the quote is called: its number and revision, or a draft. */
    public String reference() {
        return letter().reference();
    }

    /** A new sheet with its foot. */
    public SheetWriter sheet(String key) throws IOException {
        SheetWriter page = book.page(words.get("sheet." + key));
        page.setup().footer(letter().foot(), words.get("foot.page"));
        return page;
    }

    /** Writes a sheet's title and what it is for, over all its columns. */
    public void head(SheetWriter page, String key, int lastColumn) {
        page.row()
                .text(0, lastColumn, words.get("sheet." + key + ".title", "reference", reference()), SheetStyles.TITLE);
        page.row().text(0, lastColumn, words.get("sheet." + key + ".note"), SheetStyles.MUTED);
        page.gap(6);
    }

    /** Writes a table's head from {@code head.KEY.0} on; heads of figures stand at the right as the figures do. */
    public void tableHead(SheetWriter page, String key, int columns, Set<Integer> numeric) {
        page.row();
        for (int column = 0; column < columns; column++) {
            CellStyle look =
                    numeric.contains(column) ? SheetStyles.HEAD.align(CellStyle.Alignment.RIGHT) : SheetStyles.HEAD;
            page.text(column, words.get("head." + key + "." + column), look);
        }
    }
}
