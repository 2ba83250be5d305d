// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.CompletionRow;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.job.JobPackage;
import twinfeed.model.survey.IsolatorCondition;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;

/**
 * Readings after the work at the window, without one. Bands: Zs of a 40 A type B breaker, BS 7671 Table 41.3, 1.09 ohm, cold 80 %; insulation
 * Table 64, 1 Mohm; 44 degC at the outlet is judgement.
 */
final class CompletionWorkTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private final List<Runnable> quick = new ArrayList<>();
    private JobSession session;

    @BeforeEach
    void open() throws Exception {
        DemoFiles.copyInto(folder);
        JobServices services = new JobServices(DemoFiles.service(), CLOCK, Locale.UK);
        Path file = folder.resolve("birch-syke.job");
        session = new JobSession(
                new OpenJob(services.service().open(file, null), FileFingerprint.of(file), false),
                services,
                // What is thorough judges all heaters, which nobody looks at here.
                new Threads(quick::add, work -> {}, Runnable::run));
    }

    private void work() {
        while (!quick.isEmpty()) {
            List<Runnable> waiting = List.copyOf(quick);
            quick.clear();
            waiting.forEach(Runnable::run);
        }
    }

    private void enter(String reading, Object value) {
        session.edits()
                .set(
                        session.job(),
                        ReadingPath.of(JobPackage.Literals.JOB, "completion." + reading)
                                .steps(),
                        value);
        work();
    }

    private CompletionResult watched() {
        session.completion().watch(true);
        work();
        return session.completion().result();
    }

    private CompletionRow row(String title) {
        return CompletionRow.of(session.completion().result().sheet(), new Words(Locale.UK)).stream()
                .filter(each -> each.title().startsWith(title))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void bandsAreThereBeforeAnythingIsMeasured() {
        CompletionResult result = watched();
        assertEquals("", result.trouble());
        assertEquals("open", result.sheet().state());
        assertEquals("at most 0.87 Ω", row("Loop impedance at the unit").expected());
        assertEquals("? open", row("Loop impedance at the unit").judged());
        assertNull(session.job().getCompletion(), "looking enters nothing");
    }

    @Test
    void readingIsJudgedWhileItIsTypedAndKeptWhenItsFieldIsLeft() {
        watched();
        session.completion().typing(JobPackage.Literals.COMPLETION__LOOP, Resistance.valueOf("2000 ohm"));
        work();
        assertEquals(
                "\u2717 unsafe",
                row("Loop impedance at the unit").judged(),
                "a residual-current device of 30 mA cures up to 1667 ohm");
        assertEquals("unsafe", session.completion().result().sheet().state());
        assertNull(session.job().getCompletion(), "nothing is kept while it is typed");
        session.completion().typing(JobPackage.Literals.COMPLETION__LOOP, Resistance.valueOf("0.30 ohm"));
        work();
        assertEquals("\u2713 as it should be", row("Loop impedance at the unit").judged());
        enter("loop", Resistance.valueOf("0.30 ohm"));
        assertEquals(0.30, session.job().getCompletion().getLoop().si(), 1e-9);
        assertEquals("\u2713 as it should be", row("Loop impedance at the unit").judged());
        assertTrue(session.edits().dirty());
        session.edits().undo();
        work();
        assertNull(session.job().getCompletion(), "nothing that was not entered stays behind");
        assertEquals("? open", row("Loop impedance at the unit").judged());
        session.edits().redo();
        work();
        assertEquals("\u2713 as it should be", row("Loop impedance at the unit").judged());
    }

    @Test
    void halfTypedReadingLeavesTheOneThatTheJobHas() {
        watched();
        enter("outlet", Temperature.valueOf("40 C"));
        session.completion().typing(JobPackage.Literals.COMPLETION__OUTLET, Temperature.valueOf("46 C"));
        work();
        assertEquals("\u2717 unsafe", row("Outlet temperature").judged());
        session.completion().unreadable(JobPackage.Literals.COMPLETION__OUTLET);
        work();
        assertEquals("\u2713 as it should be", row("Outlet temperature").judged());
    }

    @Test
    void nothingIsComputedWhileNobodyLooks() {
        enter("loop", Resistance.valueOf("0.30 ohm"));
        assertNull(session.completion().result());
        watched();
        assertTrue(session.completion().current());
        session.completion().watch(false);
        enter("loop", Resistance.valueOf("0.31 ohm"));
        assertFalse(session.completion().current());
    }

    @Test
    void readingsAreSavedWithTheJob() {
        enter("loop", Resistance.valueOf("0.30 ohm"));
        session.save();
        assertEquals(
                0.30,
                session.services()
                        .service()
                        .open(session.file(), null)
                        .job()
                        .getCompletion()
                        .getLoop()
                        .si(),
                1e-9);
    }

    @Test
    void pagesArePrintedOnceSomebodyIsNamed() throws Exception {
        Path record = folder.resolve("record.pdf");
        enter("loop", Resistance.valueOf("0.30 ohm"));
        IllegalStateException nobody = assertThrows(
                IllegalStateException.class, () -> session.completionPages().record(record));
        assertTrue(nobody.getMessage().contains("Nobody is named"), nobody.getMessage());
        assertFalse(Files.exists(record));
        enter("by", "Demonstration engineer");
        enter("doneOn", LocalDate.of(2026, 10, 20));
        session.completionPages().record(record);
        session.completionPages().customer(folder.resolve("page.xlsx"));
        assertEquals("%PDF-", new String(Files.readAllBytes(record), 0, 5, StandardCharsets.US_ASCII));
        assertTrue(Files.size(folder.resolve("page.xlsx")) > 1000);
    }

    @Test
    void noticeNamesWhatFailsOnSafetyAndNothingElse() {
        assertEquals(List.of(), watched().reasons());
        Path out = folder.resolve("notice.pdf");
        IllegalStateException nothing = assertThrows(
                IllegalStateException.class, () -> session.completionPages().notice(List.of(), out));
        assertTrue(nothing.getMessage().contains("nothing to warn of"), nothing.getMessage());
        enter("insulation", Resistance.valueOf("0.02 Mohm"));
        assertEquals(
                List.of("insulation"),
                session.completion().result().reasons().stream()
                        .map(Reason::key)
                        .toList());
        IllegalStateException other = assertThrows(
                IllegalStateException.class, () -> session.completionPages().notice(List.of("circuit.rcd"), out));
        assertTrue(other.getMessage().contains("Insulation resistance"), other.getMessage());
        assertFalse(Files.exists(out));
        session.completionPages().notice(List.of(), out);
        assertTrue(Files.exists(out));
    }

    @Test
    void readingThatCannotBeIsNamedOnThePage() {
        watched();
        enter("loop", Resistance.valueOf("-1 ohm"));
        String trouble = session.completion().result().trouble();
        assertTrue(trouble.startsWith("Loop at the unit Zs"), trouble);
    }

    @Test
    void readingThatIsRubbedOutIsJudgedAsOneThatWasNotTaken() {
        watched();
        enter("loop", Resistance.valueOf("0.30 ohm"));
        AtomicInteger told = new AtomicInteger();
        session.completion().resulted().listen(told::incrementAndGet);
        session.completion().typing(JobPackage.Literals.COMPLETION__LOOP, null);
        work();
        assertEquals("? open", row("Loop impedance at the unit").judged());
        assertEquals(1, told.get());
        session.completion().unreadable(JobPackage.Literals.COMPLETION__OUTLET);
        work();
        assertEquals(1, told.get(), "nothing was typed there");
        session.completion().refresh();
        work();
        assertEquals(2, told.get());
        assertTrue(session.completion().current());
    }

    /** The house is worked out once and not at each key, but anew for another house, other prices or another heater. */
    @Test
    void houseIsWorkedOutAnewOnlyWhereItHasChanged() {
        session.survey().getElectricity().getCircuit().getIsolator().setCondition(IsolatorCondition.SCORCHED);
        CompletionJudge judge = new CompletionJudge(session.services());
        List<Reason> first = judge.judge(1, session.copy()).reasons();
        assertFalse(first.isEmpty(), "a scorched switch is unsafe");
        assertSame(first.get(0), judge.judge(2, session.copy()).reasons().get(0));
        session.survey().getElectricity().getCircuit().getIsolator().setCondition(IsolatorCondition.SOUND);
        List<Reason> mended = judge.judge(3, session.copy()).reasons();
        assertTrue(mended.size() < first.size(), "not what was known of another house");
        session.survey().getElectricity().getCircuit().getIsolator().setCondition(IsolatorCondition.SCORCHED);
        List<Reason> again = judge.judge(4, session.copy()).reasons();
        assertEquals(first, again);
        session.services().usePrices(folder.resolve("prices.csv"));
        assertNotSame(again.get(0), judge.judge(5, session.copy()).reasons().get(0));
    }

    @Test
    void anotherHeaterIsExpectedToTakeAnotherCurrent() {
        session.completion().watch(true);
        enter("heaterId", "h75");
        List<String> weak = bands();
        enter("heaterId", "h105");
        assertNotEquals(weak, bands());
    }

    private List<String> bands() {
        return CompletionRow.of(session.completion().result().sheet(), new Words(Locale.UK)).stream()
                .map(each -> each.title() + " " + each.expected())
                .toList();
    }
}
