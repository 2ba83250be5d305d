// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.diagnosis.completion.CompletionReading;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Section;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.io.InputException;
import twinfeed.model.job.Completion;
import twinfeed.model.job.JobFactory;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;

/** What comes after the work at a house of the demonstration. */
final class CompletionServiceTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();

    private final CompletionService completion = new CompletionService(SERVICE);

    @TempDir
    private Path folder;

    private Path job;

    @BeforeEach
    void copy() throws IOException {
        job = Demo.copyJob("rowan-brook.job", folder);
    }

    private OpenedJob recorded(String key, String text) {
        return completion.record(job, null, "A. Fitter", DAY, Map.of("heaterId", "h95", key, text));
    }

    @Test
    void readingsAreInTheJobWithWhoAndWhen() {
        recorded("outlet", "40 C");
        Completion saved = SERVICE.open(job, null).job().getCompletion();
        assertEquals("A. Fitter", saved.getBy());
        assertEquals(DAY, saved.getDoneOn());
        assertEquals("40 C", saved.getOutlet().toString());
        OpenedJob later = recorded("outlet", "41 C");
        assertEquals("41 C", later.job().getCompletion().getOutlet().toString());
    }

    @Test
    void ifAReadingIsRefusedNothingIsSaved() throws IOException {
        byte[] before = Files.readAllBytes(job);
        assertThrows(InputException.class, () -> recorded("outlet", "hot"));
        assertThrows(
                InputException.class, () -> completion.record(job, null, "A. Fitter", DAY, Map.of("heaterId", "h999")));
        assertArrayEquals(before, Files.readAllBytes(job));
    }

    private static CompletionReading outlet(CompletionSheet sheet) {
        return sheet.readings().stream()
                .filter(each -> each.key().equals("outlet"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void waterThatScaldsIsAReasonForANotice() {
        CompletionSheet hot = completion.sheet(recorded("outlet", "49 C"), null, Locale.UK);
        assertEquals("unsafe", hot.state());
        assertTrue(outlet(hot).wrong());
        assertTrue(hot.fitted());
        assertEquals("h95", hot.heater().getId());
        List<Reason> reasons = new UnsafeNotices(SERVICE).reasons(SERVICE.open(job, null), null, Locale.UK);
        assertTrue(reasons.stream().anyMatch(each -> each.key().equals("outlet")), reasons.toString());
        assertEquals(UnsafeNotices.reasons(hot), reasons);
    }

    private CompletionReading loop(String external, String line, String loop) {
        Map<String, String> readings = Map.of("heaterId", "h95", "externalLoop", external, "line", line, "loop", loop);
        CompletionSheet sheet =
                completion.sheet(completion.record(job, null, "A. Fitter", DAY, readings), null, Locale.UK);
        return sheet.readings().stream()
                .filter(each -> each.key().equals("loop"))
                .findFirst()
                .orElseThrow();
    }

    /** A breaker of 40 A, type B, disconnects up to 0.95 x 230 V / 200 A = 1.09 ohm, measured cold 80 % of it (BS 7671 table 41.3). */
    @Test
    void aLoopOverTheLimitOfTheBreakerIsSoundOnlyWhereItIsExplained() {
        assertEquals(true, loop("0.20 ohm", "0.05 ohm", "0.80 ohm").sound());
        assertEquals(true, loop("0.70 ohm", "0.20 ohm", "0.95 ohm").sound());
        CompletionReading lost = loop("0.20 ohm", "0.05 ohm", "300 ohm");
        assertTrue(lost.wrong());
        assertTrue(lost.safety());
        assertEquals(
                "at most 0.87 Ω for breaker or fuse alone; with the RCD more, if Ze and R1+R2 account for it",
                lost.expected());
    }

    @Test
    void withoutReadingsOrUnitThereIsNothingToJudge() {
        OpenedJob opened = SERVICE.open(job, null);
        InputException none = assertThrows(InputException.class, () -> completion.sheet(opened, null, Locale.UK));
        assertEquals("completion", none.problems().get(0).element());
        opened.job().getSurvey().setUnit(null);
        InputException unit = assertThrows(InputException.class, () -> completion.finished(opened, null, Locale.UK));
        assertEquals("completion.heaterId", unit.problems().get(0).element());
    }

    @Test
    void theUnitThatStaysIsJudgedWhereNoneIsFitted() {
        FinishedHouse house = completion.finished(
                SERVICE.open(job, null), SERVICE.book(Demo.FOLDER.resolve("prices.csv")), Locale.UK);
        assertEquals("h75", house.candidate().heater().getId());
        assertTrue(house.candidate().present());
        assertEquals("h75", house.house().getUnit().getHeater().getId(), "with its data");
        assertEquals(List.of(), house.works());
    }

    @Test
    void theWorkThatWasNeededIsTakenForDone() {
        completion.record(job, null, "A. Fitter", DAY, Map.of("heaterId", "h105"));
        FinishedHouse house = completion.finished(
                SERVICE.open(job, null), SERVICE.book(Demo.FOLDER.resolve("prices.csv")), Locale.UK);
        assertFalse(house.candidate().present());
        assertEquals(List.of("RCBO of 50 A in place of the present breaker or fuse"), house.works());
        assertEquals(
                List.of("A new safety device for the shower (RCBO, 50 A) in place of the present one"),
                house.customerWorks());
        assertEquals(
                "50 A",
                house.house()
                        .getElectricity()
                        .getCircuit()
                        .getDevice()
                        .getRating()
                        .toString());
    }

    @Test
    void bothPagesAreWrittenOrNone() {
        OpenedJob opened = recorded("outlet", "40 C");
        CompletionSheet sheet = completion.sheet(opened, null, Locale.UK);
        Path record = folder.resolve("record.pdf");
        Path customer = folder.resolve("customer.pdf");
        CompletionService.write(
                opened,
                sheet,
                FirmFile.none(),
                DAY,
                Locale.UK,
                new CompletionPaths(
                        twinfeed.usecase.OutputPaths.pdf(record), twinfeed.usecase.OutputPaths.pdf(customer)));
        assertTrue(Files.exists(record) && Files.exists(customer));
    }

    private static JobSheet record(Completion done, CompletionReading... readings) {
        CompletionSheet sheet = new CompletionSheet(
                done,
                SurveyFactory.eINSTANCE.createSurvey(),
                CatalogueFactory.eINSTANCE.createHeater(),
                true,
                List.of("New isolator"),
                List.of(),
                List.of(readings));
        return new CompletionRecordWriter(sheet, RuleSets.standard(), Locale.ENGLISH)
                .write("A job", Firm.of("Invented", "", ""), "1", DAY);
    }

    private static Section section(JobSheet sheet, String title) {
        return sheet.sections().stream()
                .filter(each -> each.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError(title + " in " + sheet.sections()));
    }

    @Test
    void theRecordSaysWhatIsWrongAndWhatIsMissing() {
        Completion done = JobFactory.eINSTANCE.createCompletion();
        JobSheet sheet = record(
                done,
                new CompletionReading("outlet", "Outlet", "49 C", "up to 41 C", false, true, true),
                new CompletionReading("loop", "Loop", "", "up to 0.4 ohm", null, true, true),
                new CompletionReading("flow", "Flow", "5 L/min", "", true, false, true),
                new CompletionReading("drip", "Drip", "", "", null, false, false));
        assertEquals(
                List.of("Not as it should be: Outlet", "Not entered, or cannot be judged: Loop"),
                section(sheet, "Still to do").sentences());
        assertEquals(
                List.of("\u2717 no", "? open", "\u2713 yes", "\u2013 not needed"),
                java.util.Objects.requireNonNull(section(sheet, "Readings").table()).rows().stream()
                        .map(row -> row.get(3))
                        .toList());
        assertTrue(
                sheet.conclusion().text().startsWith("UNSAFE"),
                sheet.conclusion().text());
        assertEquals(
                List.of("None recorded."),
                section(sheet, "Departures from the wiring rules").sentences());
        assertTrue(sheet.sections().stream().noneMatch(each -> each.title().equals("Remarks")));
        assertTrue(section(sheet, "What this is").sentences().get(0).contains("not that certificate"));
        assertTrue(section(sheet, "Rules")
                .sentences()
                .get(0)
                .startsWith(RuleSets.standard().title() + ": "));
        assertTrue(section(sheet, "Work done").sentences().stream().anyMatch(each -> each.contains("New isolator")));
    }

    @Test
    void aCompleteRecordHasNothingToDo() {
        Completion done = JobFactory.eINSTANCE.createCompletion();
        done.setDepartures(" One. ");
        done.setNotes(" Two. ");
        done.setDoneOn(DAY.minusDays(1));
        done.setBy("A. Fitter");
        JobSheet sheet = record(done, new CompletionReading("flow", "Flow", "5 L/min", "", true, false, true));
        assertTrue(sheet.sections().stream().noneMatch(each -> each.title().equals("Still to do")));
        assertEquals(
                List.of(" One. "),
                section(sheet, "Departures from the wiring rules").sentences());
        assertEquals(List.of("Two."), section(sheet, "Remarks").sentences());
        assertEquals(
                "Every reading was taken and is as it should be.",
                sheet.conclusion().text());
        assertTrue(
                sheet.facts().stream().anyMatch(each -> each.text().equals("24 Nov 2026")),
                sheet.facts().toString());
        assertTrue(sheet.facts().stream().anyMatch(each -> each.text().equals("A. Fitter")));
    }
}
