// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.SurveyFactory;

/** Heads, feet and titles that every paper has, and where findings are taken from. */
class JobSheetTest {
    private static JobSheet sheet(String reference, String firm) {
        return new JobSheet(
                "Job sheet",
                reference,
                List.of(),
                new QuoteLetter.Said("", ""),
                List.of(),
                List.of(),
                Firm.of(firm, "", ""),
                "0",
                Locale.UK,
                Instant.EPOCH);
    }

    @Test
    void headingAndFoot() {
        assertEquals("Job sheet: Alder Beck", sheet("Alder Beck", "").heading());
        assertEquals("Job sheet", sheet("", "").heading());
        assertEquals("Job sheet: Alder Beck", sheet("Alder Beck", "").foot());
        assertEquals(
                "Invented Showers · Job sheet: Alder Beck",
                sheet("Alder Beck", "Invented Showers").foot());
        assertEquals("☑", JobSheet.box(JobSheet.DONE));
        assertEquals("☐", JobSheet.box(""));
    }

    @Test
    void howAFirmIsReached() throws IOException {
        assertEquals("01 23; VAT 7", new Firm("F", "", "01 23", "VAT 7", 0, null).headContact());
        assertEquals("01 23", new Firm("F", "", "01 23", "", 0, null).headContact());
        assertEquals("VAT 7", new Firm("F", "", "", "VAT 7", 0, null).headContact());
        assertNull(Firm.of("F", "", "").picture());
        assertEquals(Firm.DEFAULT_ACCENT, Firm.of("F", "", "").accent());
        ByteArrayOutputStream logo = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(30, 20, BufferedImage.TYPE_INT_RGB), "png", logo);
        assertEquals(30, new Firm("F", "", "", 0, logo.toByteArray()).picture().width());
    }

    @Test
    void titlesAndAddresses() {
        DocumentTexts words = new DocumentTexts(Locale.UK);
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        option.setHeaterId("h85");
        assertEquals("h85", Titles.option(words, option));
        option.setTitle("Heater 8.5 kW");
        assertEquals("Heater 8.5 kW", Titles.option(words, option));
        option.setPresent(true);
        assertEquals("Heater 8.5 kW (fitted now)", Titles.option(words, option));
        assertEquals("1 Invented Row\nNowhere", Titles.lines(" 1 Invented Row ; Nowhere;"));
        assertEquals("", Titles.lines(null));
    }

    @Test
    void numbersInSentences() {
        DocumentTexts words = new DocumentTexts(Locale.UK);
        assertEquals(Locale.UK, words.locale());
        assertEquals("1.23", words.number(1.2345));
        assertEquals("12.5 %", words.percent(new BigDecimal("0.125")));
        assertEquals("3.5", words.tenths(3.45));
        assertEquals("8.5", words.exact(new BigDecimal("8.50")));
        assertNull(words.find("currency.XYZ"));
        assertEquals("3,5", new DocumentTexts(Locale.GERMANY).tenths(3.45));
    }

    /** With the work done the findings from after it count; where nobody gave them, those from before, and that is said. */
    @Test
    void whichFindingsAnOptionIsOfferedWith() {
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        Finding before = AssessmentFactory.eINSTANCE.createFinding();
        before.setTopic(CheckTopic.WINTER_FLOW);
        before.setOutcome(Outcome.PASSES);
        option.getFindings().add(before);
        assertEquals(
                before, OfferedFindings.about(option, CheckTopic.WINTER_FLOW).orElseThrow());
        assertTrue(OfferedFindings.about(option, CheckTopic.VOLTAGE_DROP).isEmpty());
        assertFalse(OfferedFindings.unknownAfterWork(option));
        Remedy work = AssessmentFactory.eINSTANCE.createRemedy();
        option.getRemedies().add(work);
        assertTrue(OfferedFindings.unknownAfterWork(option));
        Finding after = AssessmentFactory.eINSTANCE.createFinding();
        after.setTopic(CheckTopic.WINTER_FLOW);
        option.getAfterWork().add(after);
        assertFalse(OfferedFindings.unknownAfterWork(option));
        assertEquals(
                after, OfferedFindings.about(option, CheckTopic.WINTER_FLOW).orElseThrow());
    }

    /** A new heater of the kind that is there is not the one that is there. */
    @Test
    void whichAssessmentBelongsToAnOption() {
        Assessment assessment = AssessmentFactory.eINSTANCE.createAssessment();
        OptionAssessment present = AssessmentFactory.eINSTANCE.createOptionAssessment();
        present.setHeaterId("h85");
        present.setPresent(true);
        OptionAssessment nameless = AssessmentFactory.eINSTANCE.createOptionAssessment();
        OptionAssessment fresh = AssessmentFactory.eINSTANCE.createOptionAssessment();
        fresh.setHeaterId("h85");
        assessment.getOptions().addAll(List.of(nameless, present));
        QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
        option.setHeaterId("h85");
        assertEquals(present, OfferedFindings.assessed(assessment, option).orElseThrow());
        assessment.getOptions().add(fresh);
        assertEquals(fresh, OfferedFindings.assessed(assessment, option).orElseThrow());
        option.setName("present");
        assertEquals(present, OfferedFindings.assessed(assessment, option).orElseThrow());
        option.setName("h95");
        option.setHeaterId("h95");
        assertTrue(OfferedFindings.assessed(assessment, option).isEmpty());
    }

    @Test
    void aDocumentKeepsWhatItIsGiven() throws DocumentException {
        Quote quote = QuoteFactory.eINSTANCE.createQuote();
        quote.setDate(LocalDate.of(2026, 11, 25));
        QuoteDocument plain = QuoteDocument.of(
                SurveyFactory.eINSTANCE.createSurvey(),
                AssessmentFactory.eINSTANCE.createAssessment(),
                quote,
                Firm.of("F", "", ""),
                "0",
                Locale.UK);
        assertEquals(PhotoSource.NONE, plain.photos());
        PhotoSource photos = file -> null;
        assertEquals(photos, plain.withPhotos(photos).photos());
        assertEquals("abc", plain.withFingerprint("abc").fingerprint());
        assertNull(plain.withWork(null).withWork());
    }

    /** The message is in the language of whoever reads it. */
    @Test
    void aDocumentThatCannotBeMadeSaysWhy() {
        DocumentException trouble = new DocumentException("noDate", Map.of());
        assertEquals("noDate", trouble.key());
        assertEquals("quote: date is not set; a quote needs the day on which it is made", trouble.getMessage());
        assertTrue(trouble.message(Locale.GERMANY).contains("Angebot"), trouble.message(Locale.GERMANY));
    }

    /** Grey for what is there, then the accent, then four more, which differ in lightness; and the accent as a tint and as a line. */
    @Test
    void theColoursOfCurves() {
        Palette palette = new Palette(0x2F5D7C);
        assertEquals(0x7F8C94, palette.curve(0));
        assertEquals(0x2F5D7C, palette.curve(1));
        assertEquals(0x7F8C94, palette.curve(6));
        assertEquals(0xEAEFF2, palette.soft());
        assertEquals(0xA1B6C4, palette.line());
        assertEquals(0x2F5D7C, new Palette(0xFF2F5D7C).accent());
        assertArrayEquals(
                new int[] {0xC9761F, 0x2E8B6F, 0x7B4FA0, 0xA8323E},
                new int[] {palette.curve(2), palette.curve(3), palette.curve(4), palette.curve(5)});
    }
}
