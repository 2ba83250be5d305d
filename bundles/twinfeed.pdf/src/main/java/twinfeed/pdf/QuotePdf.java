// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import twinfeed.document.DocumentTexts;
import twinfeed.document.Palette;
import twinfeed.document.QuoteDocument;
import twinfeed.document.QuoteLetter;
import twinfeed.document.QuoteLetterWriter;
import twinfeed.document.picture.Picture;

/** Writes a quote as PDF: one page of A4 where it fits, otherwise as many as it takes; nothing is left out. */
public final class QuotePdf {
    /** Sizes of running text in points that are tried until the quote fits a page; if none does, the first one stands. */
    private static final List<Double> SIZES = List.of(9.5, 8.8, 8.1);

    private QuotePdf() {}

    /**
     * Writes a quote. The same document gives the same bytes.
     *
     * @param document what to write
     * @param out where to; it is flushed and left open, and nothing is written to it before the PDF is complete
     * @throws IOException if the firm's logo cannot be read, or the stream cannot be written
     */
    public static void write(QuoteDocument document, OutputStream out) throws IOException {
        out.write(set(document).pdf());
        out.flush();
    }

    static Typesetter.Set set(QuoteDocument document) throws IOException {
        // FOP is loaded only after all that can be wrong with the document itself.
        DocumentTexts words = new DocumentTexts(document.locale());
        QuoteLetterWriter letter = new QuoteLetterWriter(document, words);
        Picture logo = document.firm().picture();
        DocumentInfo about = new DocumentInfo(
                title(letter.write()),
                document.firm().name(),
                "Twinfeed " + document.programVersion(),
                document.locale(),
                document.time());
        return Pages.fitting(1, SIZES, size -> {
            FoWriter fo = Typesetter.get().document();
            PageBody sheet = new PageBody(fo, new Palette(document.firm().accent()), size);
            Letterhead head = new Letterhead(sheet, document.firm(), logo);
            LetterPage page = new LetterPage(sheet, letter.write());
            sheet.write(letter.foot(), words, document.locale(), () -> {
                head.write();
                page.write();
            });
            return Typesetter.get().set(fo, about);
        });
    }

    private static String title(QuoteLetter letter) {
        String site = letter.site().text().lines().findFirst().orElse("");
        return site.isEmpty() ? letter.reference() : letter.reference() + " – " + site;
    }
}
