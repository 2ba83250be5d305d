// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import twinfeed.document.DocumentException;
import twinfeed.document.Firm;
import twinfeed.document.QuoteDocument;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;

class QuotePdfTest {
    private static final String TEXT = "Nearly two litres a minute more than now in winter.";

    private static byte[] written(Quote quote, Firm firm) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        QuotePdf.write(Samples.document(quote, firm), out);
        return out.toByteArray();
    }

    private static byte[] written() throws IOException {
        return written(Samples.quote(2, TEXT), Samples.FIRM);
    }

    @Test
    void anOptionThatNobodyJudgedIsNotChecked() throws IOException {
        Quote quote = Samples.quote(2, TEXT);
        quote.getOptions().forEach(option -> option.unsetVerdict());
        try (Opened pdf = Opened.of(written(quote, Samples.FIRM))) {
            assertTrue(pdf.text().contains("not checked"), pdf.text());
            assertFalse(pdf.text().contains("suits"), pdf.text());
        }
    }

    @Test
    void itIsKnownOnWhichPageTheBoxToSignStands() throws IOException {
        assertEquals(
                1,
                QuotePdf.set(Samples.document(Samples.quote(2, TEXT), Samples.FIRM))
                        .signedOn());
        Quote draft = Samples.quote(2, TEXT);
        draft.setState(QuoteState.DRAFT);
        assertEquals(0, QuotePdf.set(Samples.document(draft, Samples.FIRM)).signedOn(), "nobody signs a draft");
    }

    @Test
    void onePageSaysAllOfIt() throws IOException {
        try (Opened pdf = Opened.of(written())) {
            assertEquals(1, pdf.document().getNumberOfPages());
            String text = pdf.text();
            for (String said : List.of(
                    "Brook & Alder Showers",
                    "Quote 2026-0042, revision 2",
                    "25 Nov 2026",
                    "25 Dec 2026",
                    "Rowan Cottage",
                    "Alderbrook Lettings",
                    "The pressure is too low for the switch when the kitchen tap runs.",
                    "Option 2 Heater 2",
                    "£1,235.50",
                    "£246.90",
                    "£1,482.40",
                    "£1,483.40",
                    "£400.00",
                    "Do not open the unit: it is live even when the water is off.",
                    "Hot water scalds within seconds.",
                    "The water in winter is 5 °C cold where it enters the house.",
                    "Redecoration beyond making good",
                    "Half on order, the rest on completion.",
                    "Please carry out: ☐ Option 1, recommended ☐ Option 2",
                    "Signature",
                    "Page 1 of 1")) {
                assertTrue(text.contains(said), said + " is not in: " + text);
            }
        }
    }

    @Test
    void sameDocumentGivesTheSameBytesWhateverTheMachine() throws IOException {
        byte[] first = written();
        TimeZone zone = TimeZone.getDefault();
        Locale locale = Locale.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(first, written());
        } finally {
            TimeZone.setDefault(zone);
            Locale.setDefault(locale);
        }
    }

    @Test
    void itSaysWhatItIs() throws IOException {
        try (Opened pdf = Opened.of(written())) {
            PDDocumentCatalog catalog = pdf.document().getDocumentCatalog();
            assertTrue(catalog.getMarkInfo().isMarked());
            assertFalse(catalog.getStructureTreeRoot().getKids().isEmpty());
            assertEquals("en-GB", catalog.getLanguage());
            assertTrue(catalog.getViewerPreferences().displayDocTitle());
            assertEquals(
                    "Quote 2026-0042, revision 2 – Rowan Cottage",
                    pdf.document().getDocumentInformation().getTitle());
            assertEquals(
                    "Brook & Alder Showers",
                    pdf.document().getDocumentInformation().getAuthor());
            assertEquals(
                    Instant.parse("2026-11-25T00:00:00Z"),
                    pdf.document().getDocumentInformation().getCreationDate().toInstant());
            String packet = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertTrue(packet.contains("<pdfuaid:part>1</pdfuaid:part>"), packet);
        }
    }

    @Test
    void everyTypefaceIsEmbedded() throws IOException {
        try (Opened pdf = Opened.of(written())) {
            List<String> fonts = pdf.embeddedFonts();
            assertTrue(fonts.stream().anyMatch(name -> name.endsWith("LiberationSans")), fonts.toString());
            assertTrue(fonts.stream().anyMatch(name -> name.contains("DejaVuSans")), fonts.toString());
        }
    }

    /** External judge: veraPDF against ISO 14289-1:2014. */
    @Test
    void aScreenReaderCanReadIt() throws Exception {
        Firm firm = new Firm("Brook & Alder Showers", "2 Quay Lane", "", 0xFFEE00, Samples.logo());
        assertEquals(List.of(), Opened.againstPdfUa(written(Samples.quote(3, TEXT), firm)));
        assertEquals(List.of(), Opened.againstPdfUa(written(Samples.quote(0, TEXT), Firm.of("", "", ""))));
        assertEquals(List.of(), Opened.againstPdfUa(written(Samples.quote(4, TEXT.repeat(40)), firm)));
    }

    /** The drawing stands behind everything else and is read out by its alternative text; names of the survey may hold any letter. */
    @Test
    void drawingOfTheHouseIsReadByEverybody() throws Exception {
        QuoteDocument document = Samples.document(Samples.quote(1, TEXT), Firm.of("", "", ""));
        WaterFeed water = SurveyFactory.eINSTANCE.createWaterFeed();
        PipeSegment pipe = SurveyFactory.eINSTANCE.createPipeSegment();
        pipe.setName("rising & <main> \u6587 \u2713");
        pipe.setSize("15 mm");
        water.getSegments().add(pipe);
        document.survey().setWater(water);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        QuotePdf.write(document, out);
        assertEquals(List.of(), Opened.againstPdfUa(out.toByteArray()));
        try (Opened pdf = Opened.of(out.toByteArray())) {
            String text = pdf.text();
            assertTrue(text.contains("The house as it is") && text.contains("15 mm"), text);
        }
        ByteArrayOutputStream again = new ByteArrayOutputStream();
        QuotePdf.write(document, again);
        assertArrayEquals(out.toByteArray(), again.toByteArray());
    }

    /** The judge has to be able to say no: without its title a file does not pass. */
    @Test
    void theJudgeRefusesWhatIsWrong() throws Exception {
        String pdf = new String(written(), StandardCharsets.ISO_8859_1);
        byte[] untitled = pdf.replace("dc:title", "dc:tutle").getBytes(StandardCharsets.ISO_8859_1);
        assertTrue(Opened.againstPdfUa(untitled).stream().anyMatch(found -> found.contains("dc:title")));
    }

    @Test
    void longTextsFlowOnAndNothingIsCut() throws IOException {
        Quote quote = Samples.quote(4, "");
        StringBuilder all = new StringBuilder();
        for (int at = 0; at < 260; at++) {
            all.append("word").append(at).append(' ');
            quote.getTerms().add("Term number " + at + " says what it says at some length.");
        }
        quote.getOptions().forEach(option -> option.setText(all.toString()));
        quote.getOptions().get(0).setTitle("Aheaterwhosenamehasnospacebutmanyverymanyletters".repeat(3));
        Typesetter.Set set = QuotePdf.set(Samples.document(quote, Samples.FIRM));
        assertTrue(set.pages() >= 2, "pages: " + set.pages());
        assertEquals(List.of(), set.remarks());
        try (Opened pdf = Opened.of(set.pdf())) {
            String text = pdf.text();
            assertTrue(text.contains("Term number 259 says"), "the last term");
            assertTrue(text.contains("word259"), "the last word of an option");
            for (String caution : quote.getCautions()) {
                assertTrue(text.contains(caution), caution);
            }
            assertTrue(count(text, "Option 4") >= 3, "heads are repeated, and the choice names it once more");
            assertTrue(text.contains("Page 2 of " + set.pages()));
        }
    }

    private static int count(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }

    @Test
    void hostileNamesAreShownAndStopNothing() throws Exception {
        String site =
                "<script>&amp;</script> ]]> \u0000\u0007 שלום \u202Egnorw\u202C \uD83D\uDE00 \uD800 文 %s ${x} -->";
        Quote quote = Samples.quote(1, site);
        quote.setSummary(site);
        quote.getCautions().add(site);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Firm firm = new Firm("<&> \u0001 \uD83D\uDE00", site, site, 0, null);
        QuotePdf.write(Samples.document(quote, firm, site), out);
        assertEquals(List.of(), Opened.againstPdfUa(out.toByteArray()));
        try (Opened pdf = Opened.of(out.toByteArray())) {
            String text = pdf.text();
            assertTrue(text.contains("<script>&amp;</script>"), text);
            assertTrue(text.contains("\uFFFD"), "what cannot be shown is seen to be there: " + text);
            assertTrue(text.contains("שלום"), text);
            assertFalse(text.contains("\u202E"), "no letter turns what follows around");
        }
    }

    /** A customer writes as on a telephone: none of it is a box on paper, and a screen reader reads it. */
    @Test
    void picturesAmongLettersAreRead() throws Exception {
        String site = "2 Sedge Row \uD83D\uDEBF\uD83D\uDC4D\uD83C\uDFFB \u2764\uFE0F \uD83D\uDE00 \uD83D\uDCDE 0123";
        Quote quote = Samples.quote(1, site);
        quote.setSummary(site);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        QuotePdf.write(Samples.document(quote, new Firm("Brook \uD83D\uDCA7", site, site, 0, null), site), out);
        assertEquals(List.of(), Opened.againstPdfUa(out.toByteArray()));
        try (Opened pdf = Opened.of(out.toByteArray())) {
            String text = pdf.text().replaceAll("\\s+", " ");
            assertTrue(text.contains("[shower][thumbs up sign] \u2764 \u263A \u260E 0123"), text);
            assertTrue(text.contains("Brook [droplet]"), text);
            assertFalse(text.contains("\uFFFD"), text);
        }
    }

    @Test
    void theLogoIsShownWithItsName() throws Exception {
        Firm firm = new Firm("Brook & Alder Showers", "", "", 0, Samples.logo());
        try (Opened pdf = Opened.of(written(Samples.quote(1, TEXT), firm))) {
            boolean picture = false;
            for (COSName name : pdf.document().getPage(0).getResources().getXObjectNames()) {
                picture |= pdf.document().getPage(0).getResources().getXObject(name) instanceof PDImageXObject;
            }
            assertTrue(picture);
        }
    }

    @Test
    void aLogoThatCannotBeReadIsNamedAndNothingIsWritten() throws Exception {
        Firm firm = new Firm("Brook & Alder", "", "", 0, "no picture".getBytes(StandardCharsets.UTF_8));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DocumentException refused = assertThrows(
                DocumentException.class, () -> QuotePdf.write(Samples.document(Samples.quote(1, TEXT), firm), out));
        assertTrue(refused.getMessage().contains("logo"), refused.getMessage());
        assertTrue(refused.getMessage().contains("JPEG and PNG"), refused.getMessage());
        assertEquals(0, out.size());
    }

    @Test
    void theProgramsOutputIsLeftAlone() throws IOException {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try (PrintStream listener = new PrintStream(said, true, StandardCharsets.UTF_8)) {
            System.setOut(listener);
            System.setErr(listener);
            written(Samples.quote(4, "Averylongwordwithoutaspace".repeat(30)), Samples.FIRM);
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
        assertEquals("", said.toString(StandardCharsets.UTF_8));
    }
}
