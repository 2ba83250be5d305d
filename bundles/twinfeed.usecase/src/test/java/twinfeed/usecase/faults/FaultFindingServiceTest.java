// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.faults;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.visit.FaultQuestion;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.io.InputException;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Symptom;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.quote.QuotingService;

/** The fault-finding at a house of the demonstration. */
final class FaultFindingServiceTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();

    private final FaultFindingService finding = new FaultFindingService(SERVICE);

    @TempDir
    private Path folder;

    private Path job;

    @BeforeEach
    void copy() throws IOException {
        job = Demo.copyJob("rowan-brook.job", folder);
    }

    private OpenedJob reported() {
        return finding.record(
                job, null, "A. Fitter", "2026-11-25 09:10", List.of(), Map.of("hoseBlocked", "no", "kettling", "yes"));
    }

    @Test
    void whatIsAnsweredIsInTheJobWithWhoAndWhen() {
        OpenedJob recorded = reported();
        assertEquals(
                recorded.job().getSurvey().getSymptoms().size(),
                SERVICE.open(job, null).job().getSurvey().getSymptoms().size());
        Symptom answered = SERVICE.open(job, null).job().getSurvey().getSymptoms().stream()
                .filter(symptom -> "kettling".equals(symptom.getKey()))
                .findFirst()
                .orElseThrow();
        assertEquals("A. Fitter", answered.getBy());
        assertEquals("2026-11-25 09:10", answered.getAt());
    }

    @Test
    void ifOneAnswerIsRefusedNothingIsSaved() throws IOException {
        byte[] before = Files.readAllBytes(job);
        assertThrows(
                InputException.class,
                () -> finding.record(
                        job,
                        null,
                        "A. Fitter",
                        "09:10",
                        List.of(),
                        Map.of("kettling", "yes", "hoseBlocked", "perhaps")));
        assertThrows(
                InputException.class,
                () -> finding.record(job, null, "A. Fitter", "09:10", List.of("noSuchStep"), Map.of()));
        assertArrayEquals(before, Files.readAllBytes(job));
    }

    @Test
    void withoutPricesTheFaultIsFoundAllTheSame() {
        FaultSheet sheet = finding.sheet(reported(), null, DAY, Locale.UK);
        assertFalse(sheet.causes().isEmpty());
        assertNull(sheet.repair());
        assertEquals("Heater 7.5 kW, two-element", sheet.heater());
    }

    @Test
    void repairStandsBesideTheNewUnitsThatWouldBeQuoted() {
        PriceBook book = SERVICE.book(Demo.FOLDER.resolve("prices.csv"));
        FaultSheet sheet = finding.sheet(reported(), book, DAY, Locale.UK);
        RepairAdvice repair = Objects.requireNonNull(sheet.repair());
        AssessedJob judged = SERVICE.judge(SERVICE.open(job, null), book, null, Locale.UK);
        Quote quote = QuotingService.draft(judged, book, DAY, FirmFile.none(), Locale.UK);
        Map<String, java.math.BigDecimal> quoted = quote.getOptions().stream()
                .filter(option -> !option.getName().equals("present"))
                .collect(Collectors.toMap(option -> option.getHeaterId(), option -> option.getNet()));
        assertEquals(Set.of("h85", "h95"), quoted.keySet());
        assertEquals(
                quoted,
                repair.replacements().stream()
                        .collect(Collectors.toMap(RepairAdvice.Replacement::heater, RepairAdvice.Replacement::price)));
        assertTrue(repair.replacements().stream().noneMatch(RepairAdvice.Replacement::enquiry));
        assertEquals(
                finding.sheet(SERVICE.open(job, null), null, DAY, Locale.UK).causes(),
                sheet.causes(),
                "prices do not change what has failed");
    }

    @Test
    void withoutAUnitThereIsNothingToFind() {
        OpenedJob opened = SERVICE.open(job, null);
        opened.job().getSurvey().setUnit(null);
        InputException refused = assertThrows(InputException.class, () -> finding.sheet(opened, null, DAY, Locale.UK));
        assertEquals("survey.unit", refused.problems().get(0).element());
    }

    @Test
    void questionsAreInTheLanguageOfTheReader() {
        List<FaultQuestion> english = FaultFindingService.questions(Locale.UK);
        List<FaultQuestion> german = FaultFindingService.questions(Locale.GERMANY);
        assertTrue(english.size() > 20);
        assertEquals(english.size(), german.size());
        assertNotEquals(english.get(0), german.get(0));
    }

    @Test
    void theJobSheetIsWritten() throws IOException {
        OpenedJob opened = reported();
        FaultSheet sheet = finding.sheet(opened, null, DAY, Locale.UK);
        Path pdf = folder.resolve("sheet.pdf");
        Path workbook = folder.resolve("sheet.xlsx");
        FaultFindingService.write(opened, sheet, FirmFile.none(), DAY, Locale.UK, new OutputPaths(workbook, pdf));
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
            assertTrue(book.getNumberOfSheets() > 0);
        }
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains("rowan-brook"), text);
            assertTrue(text.contains("25 Nov 2026"), text);
        }
    }

    @Test
    void aVisitFromBeforeThePricesHoldIsRefused() {
        PriceBook book = SERVICE.book(Demo.FOLDER.resolve("prices.csv"));
        OpenedJob opened = SERVICE.open(job, null);
        UnusableException refused = assertThrows(
                UnusableException.class,
                () -> finding.sheet(opened, book, book.getDate().minusDays(1), Locale.UK));
        assertTrue(refused.getMessage().startsWith(job + ": the price book holds from"), refused.getMessage());
    }
}
