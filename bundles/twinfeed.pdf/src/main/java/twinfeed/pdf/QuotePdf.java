// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentTexts;
import twinfeed.document.Firm;
import twinfeed.document.Palette;
import twinfeed.document.QuoteDocument;
import twinfeed.document.QuoteLetter;
import twinfeed.document.QuoteLetterWriter;
import twinfeed.document.picture.Picture;

/**
 * Writes a quote as PDF: everything down to the box to sign on the first page of A4, then what the price is made of and the small print;
 * nothing is left out.
 */
public final class QuotePdf {
    /** Sizes of running text in points that are tried until the quote fits; if none does, the first one stands. */
    private static final List<Double> SIZES = List.of(9.5, 8.8, 8.1, 7.5);

    private final QuoteDocument document;
    private final DocumentTexts words;
    private final QuoteLetterWriter writer;
    private final QuoteLetter letter;
    private final @Nullable Picture logo;
    private @Nullable HouseFigures figures;

    private QuotePdf(QuoteDocument document) throws IOException {
        // FOP is loaded only after all that can be wrong with the document itself.
        this.document = document;
        this.words = new DocumentTexts(document.locale());
        this.writer = new QuoteLetterWriter(document, words);
        this.logo = document.firm().picture();
        this.letter = writer.write();
    }

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

    /**
     * Does once what the first PDF of a process has to do in any case: call it on a thread of its own while the job is still being judged.
     * Calling it again or not at all does no harm.
     */
    public static void prepare() {
        FoWriter fo = Typesetter.get().document();
        PageBody sheet = new PageBody(fo, new Palette(Firm.DEFAULT_ACCENT), SIZES.get(0));
        sheet.write("", new DocumentTexts(Locale.ROOT), Locale.ROOT, () -> HouseFigures.sample()
                .write(sheet));
        try {
            Typesetter.get().set(fo, new DocumentInfo("", "", "", Locale.ROOT, Instant.EPOCH));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    static Typesetter.Set set(QuoteDocument document) throws IOException {
        QuotePdf quote = new QuotePdf(document);
        return Pages.fitting(
                SIZES,
                size -> quote.set(size, quote::whole),
                size -> quote.set(size, LetterPage::write),
                size -> quote.set(size, LetterPage::writeFront));
    }

    private void whole(LetterPage page) {
        page.write();
        if (figures == null) {
            figures = HouseFigures.of(document, Typesetter.get().typefaces());
        }
        page.write(figures);
    }

    private Typesetter.Set set(double size, Consumer<LetterPage> part) throws IOException {
        FoWriter fo = Typesetter.get().document();
        PageBody sheet = new PageBody(fo, new Palette(document.firm().accent()), size);
        Letterhead head = new Letterhead(sheet, document.firm(), logo);
        LetterPage page = new LetterPage(sheet, letter);
        sheet.write(writer.foot(), words, document.locale(), () -> {
            head.write();
            part.accept(page);
        });
        DocumentInfo about = new DocumentInfo(
                title(letter),
                document.firm().name(),
                "Twinfeed " + document.programVersion(),
                document.locale(),
                document.time());
        return Typesetter.get().set(fo, about);
    }

    private static String title(QuoteLetter letter) {
        String site = letter.site().text().lines().findFirst().orElse("");
        return site.isEmpty() ? letter.reference() : letter.reference() + " – " + site;
    }
}
