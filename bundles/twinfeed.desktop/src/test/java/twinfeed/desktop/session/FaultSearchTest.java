// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.io.InputException;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.FaultStep;
import twinfeed.model.survey.Symptom;
import twinfeed.usecase.TwinfeedService;

/** The search for the fault at Alder Beck, where the shower goes cold as soon as a tap is opened. */
final class FaultSearchTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);
    private static final String COLD = "goesColdWhenTapOpens";
    private static final String LEAK = "leakFromCase";

    @TempDir
    Path folder;

    private final List<Runnable> quick = new ArrayList<>();
    private final List<Runnable> thorough = new ArrayList<>();
    private JobServices services;
    private JobSession session;
    private FaultSearch faults;

    @BeforeEach
    void open() throws Exception {
        DemoFiles.copyInto(folder);
        // The other checks take time and say nothing of what is tested here.
        TwinfeedService service = new TwinfeedService(DemoFiles.service().calculators().stream()
                .filter(each -> each.descriptor().id().equals("faults"))
                .toList());
        services = new JobServices(service, CLOCK, Locale.UK);
        Path file = folder.resolve("alder-beck.job");
        session = new JobSession(
                new OpenJob(service.open(file, null), FileFingerprint.of(file), false),
                services,
                new Threads(quick::add, thorough::add, Runnable::run));
        session.survey().getCandidates().retainAll(List.of("h85"));
        faults = session.faults();
    }

    private static void work(List<Runnable> queue) {
        List<Runnable> waiting = List.copyOf(queue);
        queue.clear();
        waiting.forEach(Runnable::run);
    }

    @Test
    void nothingIsAskedWhileNobodyLooks() {
        AtomicInteger asked = new AtomicInteger();
        AtomicInteger answered = new AtomicInteger();
        faults.asking().listen(asked::incrementAndGet);
        faults.resulted().listen(answered::incrementAndGet);
        faults.answer(LEAK, "no");
        work(quick);
        assertEquals(0, asked.get());
        assertNull(faults.result());
        assertFalse(faults.current());
        assertFalse(faults.coverMayComeOff(), "without a sheet nothing is known of the isolation");
        faults.watch(true);
        faults.watch(true);
        assertEquals(1, asked.get(), "who looks already does not begin to");
        work(quick);
        assertEquals(1, answered.get());
        assertTrue(faults.current());
        FaultSheet sheet = faults.result().sheet();
        assertNotNull(sheet, faults.result().trouble());
        assertTrue(sheet.answers().size() >= 2, "the symptom that was reported and the question that was answered");
        faults.watch(false);
        faults.answer(LEAK, "yes");
        work(quick);
        assertFalse(faults.current(), "nobody looks any more");
        assertEquals(1, asked.get());
    }

    @Test
    void answerReplacesTheOneBeforeAndIsOneStepToUndo() {
        faults.answer(COLD, "no");
        Symptom answered = faults.recorded(COLD).orElseThrow();
        assertEquals(FaultAnswer.NO, answered.getAnswer());
        assertEquals("Demonstration engineer", answered.getBy(), "who takes the survey answers");
        assertEquals("2026-11-25 09:30", answered.getAt());
        assertTrue(answered.getNote().startsWith("It goes cold"), "what the customer said is kept");
        assertEquals(1, session.survey().getSymptoms().size());
        session.edits().undo();
        assertFalse(faults.recorded(COLD).orElseThrow().isSetAnswer());
        faults.answer(LEAK, "yes");
        assertEquals(2, session.survey().getSymptoms().size());
        faults.clear(LEAK);
        assertTrue(faults.recorded(LEAK).isEmpty());
        assertTrue(faults.recorded(COLD).isPresent());
        faults.clear(LEAK);
        assertEquals(1, session.survey().getSymptoms().size());
    }

    @Test
    void whoeverIsNamedAnswersAndWithoutAnybodyNothingIsRecorded() {
        assertEquals("Demonstration engineer", faults.by());
        faults.by("  A colleague ");
        assertEquals("A colleague", faults.by());
        faults.answer(LEAK, "no");
        assertEquals("A colleague", faults.recorded(LEAK).orElseThrow().getBy());
        faults.by(" ");
        session.survey().setTakenBy(null);
        assertEquals("", faults.by());
        assertThrows(InputException.class, () -> faults.answer(LEAK, "yes"));
        assertEquals(FaultAnswer.NO, faults.recorded(LEAK).orElseThrow().getAnswer());
        assertThrows(InputException.class, () -> faults.tick("showerOff"));
        assertNull(session.survey().getFaultFinding());
        assertThrows(InputException.class, faults::beginIsolationAgain);
    }

    private List<String> tickAll() {
        work(quick);
        List<String> steps = faults.result().sheet().isolation().stream()
                .map(FaultSheet.Tick::step)
                .toList();
        String last = steps.get(steps.size() - 1);
        steps.stream().filter(step -> !step.equals(last)).forEach(faults::tick);
        work(quick);
        assertFalse(faults.coverMayComeOff(), "the tester was not proved again");
        faults.tick(last);
        work(quick);
        return steps;
    }

    @Test
    void coverComesOffAfterTheLastStepAndNotBefore() {
        faults.watch(true);
        assertThrows(InputException.class, () -> faults.answer("strainerDirty", "yes"), "it is under the cover");
        List<String> steps = tickAll();
        assertTrue(steps.size() > 5, steps.toString());
        assertTrue(faults.coverMayComeOff());
        assertTrue(session.edits().dirty());
        assertFalse(session.edits().canUndo(), "a tick is a fact and no edit");
        faults.answer("strainerDirty", "yes");
        assertEquals(
                FaultAnswer.YES, faults.recorded("strainerDirty").orElseThrow().getAnswer());
    }

    @Test
    void isolationThatBeginsAgainStaysOnRecord() {
        faults.watch(true);
        faults.beginIsolationAgain();
        assertNull(session.survey().getFaultFinding(), "there was none to begin again");
        List<String> steps = tickAll();
        faults.by("A colleague");
        faults.beginIsolationAgain();
        work(quick);
        assertFalse(faults.coverMayComeOff());
        assertEquals(List.of(), session.survey().getFaultFinding().getIsolation());
        List<FaultStep> record = session.survey().getFaultFinding().getSteps();
        assertEquals(1, record.size());
        assertEquals(
                "Safe isolation of 2026-11-25 09:30 to 2026-11-25 09:30 ended (" + steps.size()
                        + " steps ticked, the first by Demonstration engineer)",
                record.get(0).getWhat());
        assertEquals("A colleague", record.get(0).getBy());
        assertEquals("2026-11-25 09:30", record.get(0).getAt());
        faults.beginIsolationAgain();
        assertEquals(1, record.size(), "nothing is ticked, so nothing ends");
    }

    @Test
    void repairIsPricedOnceTheWholeJobHasBeenJudged() {
        assertFalse(faults.pricing(), "without a price book nothing is priced");
        faults.watch(true);
        work(quick);
        services.usePrices(folder.resolve("prices.csv"));
        assertTrue(faults.pricing());
        work(quick);
        assertFalse(faults.result().priced());
        assertTrue(faults.pricing());
        work(thorough);
        assertFalse(faults.pricing(), "the job has been judged");
        assertFalse(faults.result().priced(), "its repair is being priced");
        AtomicInteger answered = new AtomicInteger();
        faults.resulted().listen(answered::incrementAndGet);
        work(thorough);
        assertTrue(faults.result().priced());
        assertTrue(faults.current());
        assertEquals(1, answered.get());
        assertNotNull(faults.result().sheet(), faults.result().trouble());
        assertFalse(faults.pricing());
    }

    @Test
    void sheetWithoutPricesThatComesLateDoesNotHideTheOneWithThem() {
        services.usePrices(folder.resolve("prices.csv"));
        faults.watch(true);
        work(quick);
        faults.answer(LEAK, "no");
        quick.remove(0).run(); // the findings, and not yet the sheet, which was asked for after them
        work(thorough);
        work(thorough);
        assertTrue(faults.result().priced());
        work(quick);
        assertTrue(faults.result().priced());
        faults.answer(LEAK, "yes");
        work(quick);
        assertFalse(faults.result().priced(), "but a newer one does");
    }

    @Test
    void surveyThatCannotBeRightGetsNoSheet() {
        faults.watch(true);
        session.survey().getWater().getTest().setStaticPressure(twinfeed.units.Pressure.valueOf("1 bar"));
        session.recalculate();
        faults.answer(LEAK, "no");
        work(quick);
        assertNull(faults.result().sheet());
        assertTrue(
                faults.result().trouble().contains("Running pressure"),
                faults.result().trouble());
        assertFalse(faults.coverMayComeOff());
    }

    @Test
    void repairIsPricedForWhoeverLooksLater() {
        services.usePrices(folder.resolve("prices.csv"));
        assertTrue(faults.pricing(), "the job has not been judged yet");
        work(quick);
        work(thorough);
        assertNull(faults.result(), "nobody looks");
        faults.watch(true);
        work(thorough);
        assertTrue(faults.result().priced(), "the job was judged before, and nothing else will ask for it");
    }
}
