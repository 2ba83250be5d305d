// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** A PDF read back. */
record Opened(PDDocument document) implements AutoCloseable {
    static Opened of(byte[] pdf) throws IOException {
        return new Opened(Loader.loadPDF(pdf));
    }

    /** Its text on one line, whatever way it was broken. */
    String text() throws IOException {
        return flat(new PDFTextStripper().getText(document));
    }

    static String flat(String text) {
        return text.replaceAll("[\\s\\u00a0]+", " ");
    }

    /** The names of its fonts; each has to be embedded. */
    List<String> embeddedFonts() throws IOException {
        List<String> names = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                if (!font.isEmbedded()) {
                    throw new AssertionError(font.getName() + " is not embedded");
                }
                names.add(font.getName());
            }
        }
        return names;
    }

    /** What veraPDF finds against ISO 14289-1 (PDF/UA-1); it is the reference validator of the PDF Association's members. */
    static List<String> againstPdfUa(byte[] pdf) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        PDFAFlavour flavour = PDFAFlavour.PDFUA_1;
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId() + ": " + assertion.getMessage())
                    .toList();
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
