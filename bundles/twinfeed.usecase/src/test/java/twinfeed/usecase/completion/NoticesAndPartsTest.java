// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.diagnosis.completion.CompletionReading;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Section;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.io.InputException;
import twinfeed.model.job.JobFactory;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.quote.QuoteState;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.quotes.Verification;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;
import twinfeed.usecase.quote.IssuedQuote;

/** The notice of an unsafe unit, and the parts to pack for accepted work. */
final class NoticesAndPartsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Firm FIRM = Firm.of("Invented", "", "");

    private final TwinfeedService service = TwinfeedService.onClassPath();
    private final UnsafeNotices notices = new UnsafeNotices(service);

    @TempDir
    private Path folder;

    private OpenedJob rowan() {
        return service.open(Demo.FOLDER.resolve("rowan-brook.job"), null);
    }

    private static List<List<String>> rows(JobSheet sheet, int section) {
        return Objects.requireNonNull(sheet.sections().get(section).table()).rows();
    }

    @Test
    void aSoundUnitIsNoReasonForANotice() {
        assertEquals(List.of(), notices.reasons(rowan(), null, Locale.UK));
    }

    @Test
    void whatFailsAndWhatWasReportedAreReasons() {
        OpenedJob opened = rowan();
        opened.job().getSurvey().getElectricity().getCircuit().getRcd().setKind(twinfeed.model.survey.RcdKind.NONE);
        for (String key : List.of("leakFromCase", "weakFlowHere", "leakFromCase")) {
            Symptom sign = SurveyFactory.eINSTANCE.createSymptom();
            sign.setKey(key);
            opened.job().getSurvey().getSymptoms().add(sign);
        }
        List<Reason> reasons = notices.reasons(opened, null, Locale.UK);
        assertEquals(
                List.of("circuit.rcd", "leakFromCase"),
                reasons.stream().map(Reason::key).toList());
        assertTrue(reasons.get(0).text().contains("RCD"), reasons.toString());
        assertEquals(
                "Water comes out of the case of the shower.", reasons.get(1).text());
    }

    @Test
    void aReadingIsAReasonWithWhatItShouldBe() {
        CompletionSheet sheet = new CompletionSheet(
                JobFactory.eINSTANCE.createCompletion(),
                SurveyFactory.eINSTANCE.createSurvey(),
                CatalogueFactory.eINSTANCE.createHeater(),
                true,
                List.of(),
                List.of(),
                List.of(
                        new CompletionReading("outlet", "Outlet", "49 C", "up to 41 C", false, true, true),
                        new CompletionReading("polarity", "Polarity", "no", "", false, true, true),
                        new CompletionReading("drip", "Drip", "yes", "", false, false, true)));
        assertEquals(
                List.of(new Reason("outlet", "Outlet", "49 C (up to 41 C)"), new Reason("polarity", "Polarity", "no")),
                UnsafeNotices.reasons(sheet));
    }

    @Test
    void theNoticeSaysWhatWasFoundAndWhatItMeans() {
        JobSheet notice = new UnsafeNoticeWriter(
                        SurveyFactory.eINSTANCE.createSurvey(),
                        List.of(new Reason("rcd", "RCD", "It does not trip.")),
                        Locale.ENGLISH)
                .write("A job", "Heater 7.5 kW", FIRM, "1", DAY);
        PageParts words = new PageParts(Locale.ENGLISH);
        assertEquals(
                List.of(words.get("notice.found"), words.get("notice.means"), words.get("notice.done")),
                notice.sections().stream().map(Section::title).toList());
        assertEquals(List.of(List.of("RCD", "It does not trip.")), rows(notice, 0));
        assertEquals(3, notice.sections().get(1).sentences().size());
        assertEquals(5, rows(notice, 2).size());
        assertTrue(rows(notice, 2).stream().noneMatch(row -> row.get(1).isBlank()), "what was done is ticked");
        assertEquals(
                "",
                Objects.requireNonNull(notice.sections().get(2).table())
                        .columns()
                        .get(0)
                        .head());
        assertTrue(notice.facts().stream().anyMatch(fact -> fact.text().equals("Heater 7.5 kW")));
    }

    @Test
    void theNoticeIsWrittenWithTheUnitsNameInItsLanguage() throws IOException {
        Path pdf = folder.resolve("notice.pdf");
        OpenedJob opened = rowan();
        UnsafeNotices.write(
                opened,
                List.of(new Reason("rcd", "RCD", "Er l\u00f6st nicht aus.")),
                service.book(Demo.FOLDER.resolve("prices.csv")),
                FirmFile.none(),
                DAY,
                Locale.GERMANY,
                OutputPaths.pdf(pdf));
        String german = twinfeed.pricing.TranslatedBook.text(
                service.book(Demo.FOLDER.resolve("prices.csv")), Locale.GERMANY, "Heater 7.5 kW, two-element");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
            assertTrue(text.contains("Er l\u00f6st nicht aus."), text);
            assertTrue(text.contains(german.replace('\u00a0', ' ')), text);
        }
    }

    private static QuoteLine line(String code, String quantity) {
        QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
        line.setCode(code);
        line.setDescription("Cable");
        line.setUnit("m");
        line.setQuantity(new BigDecimal(quantity));
        return line;
    }

    private static IssuedQuote issued(QuoteState state, @Nullable String chosen) {
        Quote quote = QuoteFactory.eINSTANCE.createQuote();
        quote.setNumber("2026-0042");
        quote.setRevision(1);
        quote.setState(state);
        quote.setChosen(chosen);
        for (String name : List.of("h85", "h95")) {
            QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
            option.setName(name);
            option.setTitle("Heater " + name);
            QuoteSection section = QuoteFactory.eINSTANCE.createQuoteSection();
            section.setKey("unit");
            section.getLines().add(line("cable-10-" + name, "2.5"));
            section.getLines().add(line("cable-10-" + name, "4"));
            option.getSections().add(section);
            quote.getOptions().add(option);
        }
        return new IssuedQuote(
                Path.of("2026-0042-r1.quote"), quote, "", true, Verification.UNCHANGED, "A. Tenant", "Mill House");
    }

    @Test
    void partsAreThoseOfTheAcceptedOption() {
        assertEquals(
                List.of(new PartsListWriter.Part("cable-10-h95", "Cable", new BigDecimal("6.5"), "m")),
                PartsToPack.of(issued(QuoteState.ACCEPTED, "h95")));
        for (IssuedQuote open : List.of(
                issued(QuoteState.ISSUED, "h95"),
                issued(QuoteState.ACCEPTED, null),
                issued(QuoteState.ACCEPTED, "h999"))) {
            UnusableException refused = assertThrows(UnusableException.class, () -> PartsToPack.of(open));
            assertTrue(refused.getMessage().contains("2026-0042-r1"), refused.getMessage());
        }
    }

    @Test
    void theListHasABoxForEachPartAndWhatIsStillToBeAskedFor() {
        QuoteOption option =
                issued(QuoteState.ACCEPTED, "h95").quote().getOptions().get(1);
        option.getEnquiries().add("Tiles");
        JobSheet list = PartsListWriter.write(
                "2026-0042-r1", SurveyFactory.eINSTANCE.createSurvey(), option, FIRM, "1", DAY, Locale.ENGLISH);
        assertEquals(List.of(List.of("", "6.5", "m", "Cable", "cable-10-h95")), rows(list, 0));
        assertEquals(
                "6,5",
                rows(
                                PartsListWriter.write(
                                        "1",
                                        SurveyFactory.eINSTANCE.createSurvey(),
                                        option,
                                        FIRM,
                                        "1",
                                        DAY,
                                        Locale.GERMANY),
                                0)
                        .get(0)
                        .get(1));
        assertEquals(List.of("Tiles"), list.sections().get(1).sentences());
        assertEquals("2026-0042-r1", list.reference());
        assertTrue(list.facts().stream().anyMatch(fact -> fact.text().equals("Heater h95")));
    }

    @Test
    void placesOfBothPagesAreChecked() {
        OutputPaths right = OutputPaths.pdf(folder.resolve("a.pdf"));
        OutputPaths wrong = OutputPaths.pdf(folder.resolve("a.txt"));
        new CompletionPaths(right, right).check();
        assertThrows(InputException.class, () -> new CompletionPaths(wrong, right).check());
        assertThrows(InputException.class, () -> new CompletionPaths(right, wrong).check());
    }
}
