// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.io.InputException;
import twinfeed.model.io.JobFile;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.quotes.Verification;
import twinfeed.units.Pressure;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.quote.IssuedQuote;

final class JobSessionTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private final List<Runnable> quick = new ArrayList<>();
    private final List<Runnable> thorough = new ArrayList<>();
    private TwinfeedService service;
    private JobServices services;

    @BeforeEach
    void open() throws Exception {
        DemoFiles.copyInto(folder);
        service = DemoFiles.service();
        services = new JobServices(service, CLOCK, Locale.UK);
    }

    /** A job whose work waits until {@link #work} does it. */
    private JobSession waiting() {
        return session(new Threads(quick::add, thorough::add, Runnable::run));
    }

    private JobSession session(Threads threads) {
        Path file = folder.resolve("alder-beck.job");
        return new JobSession(
                new OpenJob(service.open(file, null), FileFingerprint.of(file), false), services, threads);
    }

    private static void work(List<Runnable> queue) {
        List<Runnable> waiting = List.copyOf(queue);
        queue.clear();
        waiting.forEach(Runnable::run);
    }

    private static void setStatic(JobSession session, String pressure) {
        ReadingPath path = ReadingPath.of(SurveyPackage.Literals.SURVEY, "water.test.staticPressure");
        session.edits().set(session.survey(), path.steps(), Pressure.valueOf(pressure));
    }

    @Test
    void quickAnswerIsShownBeforeTheWholeOne() {
        JobSession session = waiting();
        session.recalculate();
        assertNull(session.result());
        work(quick);
        assertTrue(session.glanced());
        assertFalse(session.current());
        setStatic(session, "2.9 bar");
        assertFalse(session.glanced(), "what is shown is older than what was typed");
    }

    @Test
    void wholeAnswerStaysUntilTheNextIsThere() {
        JobSession session = waiting();
        ReadingPath candidates = ReadingPath.of(SurveyPackage.Literals.SURVEY, "candidates");
        session.edits().setAll(session.survey(), candidates.last(), List.of("h85"));
        work(quick);
        assertNull(session.whole());
        work(thorough);
        JobResult first = session.whole();
        assertSame(session.result(), first);
        setStatic(session, "2.9 bar");
        work(quick);
        assertSame(first, session.whole());
        assertNotSame(session.result(), first);
        work(thorough);
        assertSame(session.result(), session.whole());
    }

    @Test
    void worksAreLookedForWhenTheQuickAnswerIsThere() {
        JobSession session = waiting();
        session.recalculate();
        assertEquals(List.of(), thorough);
        work(quick);
        assertEquals(1, thorough.size());
    }

    @Test
    void searchForWhatWasTypedBeforeIsGivenUp() {
        JobSession session = waiting();
        session.recalculate();
        work(quick);
        Runnable before = thorough.get(0);
        setStatic(session, "2.9 bar");
        before.run();
        assertNull(session.whole());
        assertFalse(session.current());
    }

    @Test
    void answersToWhatWasTypedBeforeAreDropped() {
        JobSession session = waiting();
        AtomicInteger shown = new AtomicInteger();
        session.resulted().listen(shown::incrementAndGet);
        setStatic(session, "2.9 bar");
        setStatic(session, "2.8 bar");
        setStatic(session, "2.7 bar");
        work(quick);
        assertEquals(1, thorough.size());
        assertEquals(1, shown.get(), "only the last question is worth an answer");
        assertEquals(3, session.result().revision());
    }

    @Test
    void impossibleReadingGivesTroubleInsteadOfFindings() {
        JobSession session = waiting();
        setStatic(session, "1.0 bar");
        work(quick);
        assertNull(session.result().judged(), "the running pressure is 1.8 bar");
        assertTrue(
                session.result().trouble().contains("Running pressure"),
                session.result().trouble());
        QuoteWork quote = session.quoteWork();
        assertThrows(IllegalStateException.class, quote::compute);
    }

    @Test
    void withoutCalculatorsNothingSeemsToSuit() {
        services = new JobServices(new TwinfeedService(List.of()), CLOCK, Locale.UK);
        JobSession session = session(Threads.here());
        session.recalculate();
        assertNull(session.result().judged());
        assertFalse(session.result().trouble().isEmpty());
    }

    @Test
    void computingUsesACopyOfTheSurvey() {
        JobSession session = waiting();
        session.recalculate();
        Runnable asked = quick.get(0);
        session.edits().changed().listen(() -> {});
        asked.run();
        assertNotNull(session.result().judged());
        assertTrue(session.result().judged().opened().job().getSurvey() != session.survey());
    }

    @Test
    void savedJobIsTheSameAgain() {
        JobSession session = waiting();
        setStatic(session, "2.9 bar ± 0.1 bar");
        session.save();
        assertFalse(session.edits().dirty());
        assertEquals(
                Pressure.valueOf("2.9 bar ± 0.1 bar"),
                JobFile.load(session.file()).getSurvey().getWater().getTest().getStaticPressure());
    }

    @Test
    void changeByAnotherProgramIsNoticed() throws Exception {
        JobSession session = waiting();
        assertFalse(session.changedOutside());
        Files.writeString(session.file(), Files.readString(session.file()) + "\n");
        assertTrue(session.changedOutside());
        session.acceptOutside();
        assertFalse(session.changedOutside());
        Files.delete(session.file());
        assertTrue(session.changedOutside());
    }

    @Test
    void jobSavedElsewhereStillFindsItsCatalogue() throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("jobs/2026")).resolve("other.job");
        JobSession session = waiting();
        session.saveAs(elsewhere);
        assertEquals(elsewhere, session.file());
        assertEquals("../../heaters.catalogue", JobFile.load(elsewhere).getCatalogue());
        assertFalse(service.open(elsewhere, null).catalogue().getHeaters().isEmpty());
    }

    @Test
    void saveThatCannotBeDoneChangesNothing() {
        JobSession session = waiting();
        Path before = session.file();
        Path nowhere = folder.resolve("no such folder").resolve("other.job");
        assertThrows(InputException.class, () -> session.saveAs(nowhere));
        assertEquals(before, session.file());
        session.save();
        assertEquals("heaters.catalogue", JobFile.load(before).getCatalogue());
    }

    @Test
    void newJobIsEmptyAndKnowsItsHeaters() throws Exception {
        Path file = Files.createDirectories(folder.resolve("new")).resolve("fresh.job");
        NewJob.write(file, folder.resolve("heaters.catalogue"));
        assertEquals("../heaters.catalogue", JobFile.load(file).getCatalogue());
        assertNull(JobFile.load(file).getSurvey().getWater());
        assertThrows(InputException.class, () -> NewJob.write(file, folder.resolve("none.catalogue")));
    }

    @Test
    void changesThatWereNotSavedSurviveASuddenEnd() {
        JobSession session = waiting();
        setStatic(session, "2.9 bar");
        work(quick);
        assertTrue(session.backup().there());
        // The program ends here without a word; the next sitting finds the copy.
        JobSession next = waiting();
        assertTrue(next.oldChanges());
        assertEquals(
                Pressure.valueOf("2.9 bar"),
                next.backup().job().getSurvey().getWater().getTest().getStaticPressure());
        setStatic(next, "2.5 bar");
        work(quick);
        assertEquals(
                Pressure.valueOf("2.9 bar"),
                next.backup().job().getSurvey().getWater().getTest().getStaticPressure(),
                "not replaced before somebody has decided");
        next.dropOldChanges();
        assertFalse(next.backup().there());
    }

    @Test
    void copyGoesWhenItIsNotNeeded() {
        JobSession session = waiting();
        setStatic(session, "2.9 bar");
        work(quick);
        session.edits().undo();
        work(quick);
        assertFalse(session.backup().there(), "undone");
        setStatic(session, "2.9 bar");
        session.save();
        work(quick);
        assertFalse(session.backup().there(), "saved");
        setStatic(session, "2.8 bar");
        work(quick);
        session.close();
        work(quick);
        assertFalse(session.backup().there(), "closed by somebody who was asked");
    }

    @Test
    void changesThatWereTakenOverCountAsUnsaved() {
        Path file = folder.resolve("alder-beck.job");
        JobSession session = new JobSession(
                new OpenJob(service.open(file, null), FileFingerprint.of(file), true), services, Threads.here());
        assertTrue(session.edits().dirty());
        session.save();
        assertFalse(session.edits().dirty());
    }

    @Test
    void displayOfAnotherThreadGetsTheAnswers() {
        List<Runnable> display = new ArrayList<>();
        Executor later = display::add;
        JobSession session = session(new Threads(Runnable::run, thorough::add, later));
        session.recalculate();
        assertNull(session.result(), "the answer waits for the thread that shows it");
        work(display);
        assertNotNull(session.result());
    }

    @Test
    void jobSavedElsewhereIsSavedAndKeepsItsPhotographs() throws Exception {
        JobSession session = waiting();
        setStatic(session, "2.9 bar");
        work(quick);
        BackupCopy before = session.backup();
        assertTrue(before.there());
        Path elsewhere = Files.createDirectories(folder.resolve("jobs")).resolve("other.job");
        session.saveAs(elsewhere);
        work(quick);
        assertFalse(before.there(), "what was saved needs no copy");
        assertFalse(session.edits().dirty());
        assertFalse(session.changedOutside());
        assertEquals(
                "../alder-beck-loft.jpg", session.survey().getPhotos().get(0).getFile());
        assertEquals("../heaters.catalogue", session.job().getCatalogue());
        Path beside = folder.resolve("beside.job");
        JobSession other = waiting();
        other.saveAs(beside);
        assertEquals("heaters.catalogue", JobFile.load(beside).getCatalogue(), "in the same folder nothing moves");
    }

    @Test
    void oldChangesAreGivenUpBySavingElsewhereOrByDroppingThem() throws Exception {
        JobSession first = waiting();
        setStatic(first, "2.9 bar");
        work(quick);
        JobSession next = waiting();
        assertTrue(next.oldChanges());
        next.saveAs(folder.resolve("other.job"));
        assertFalse(next.oldChanges());
        JobSession third = waiting();
        third.save();
        work(quick);
        assertTrue(third.backup().there(), "saving does not decide about the changes of an earlier sitting");
        third.dropOldChanges();
        assertFalse(third.oldChanges());
        assertFalse(third.backup().there());
        setStatic(third, "2.8 bar");
        work(quick);
        assertTrue(third.backup().there(), "from now on its own changes are kept");
    }

    @Test
    void whoeverListensIsToldOfAnotherOptionAndOfOldResults() {
        JobSession session = waiting();
        AtomicInteger told = new AtomicInteger();
        AtomicInteger old = new AtomicInteger();
        session.chose().listen(told::incrementAndGet);
        session.computing().listen(old::incrementAndGet);
        assertNull(session.chosen());
        session.choose("h95");
        session.choose("h95");
        assertEquals("h95", session.chosen());
        assertEquals(1, told.get());
        setStatic(session, "2.9 bar");
        assertEquals(1, old.get());
        assertEquals(Locale.UK, session.locale());
        session.close();
        services.noPrices();
        assertEquals(1, old.get(), "a job that is not shown is not computed any more");
    }

    @Test
    void jobWithoutASurveyGetsAnEmptyOne() {
        Path file = folder.resolve("alder-beck.job");
        OpenJob open = new OpenJob(service.open(file, null), FileFingerprint.of(file), false);
        open.opened().job().setSurvey(null);
        JobSession session = new JobSession(open, services, Threads.here());
        assertNotNull(session.survey());
        assertNull(session.survey().getWater());
    }

    @Test
    void issuedQuoteIsReadAgainWhenACustomerHasDecidedButNotOfAJobThatIsClosed() {
        JobSession session = waiting();
        AtomicInteger told = new AtomicInteger();
        session.resulted().listen(told::incrementAndGet);
        services.decided().fire();
        assertTrue(quick.isEmpty(), "none was issued");
        IssuedQuote gone = new IssuedQuote(
                folder.resolve("gone.quote"),
                QuoteFactory.eINSTANCE.createQuote(),
                "",
                false,
                Verification.UNKNOWN,
                "",
                "");
        session.issued(gone);
        assertEquals(1, told.get(), "what is shown names the quote");
        services.decided().fire();
        assertEquals(1, quick.size());
        work(quick);
        assertEquals(gone, session.issued(), "a file that cannot be read leaves what is known");
        session.close();
        work(quick);
        services.decided().fire();
        assertTrue(quick.isEmpty());
    }

    @Test
    void surveyThatCannotBeRightPrintsNoQuote() {
        Path pdf = folder.resolve("quote.pdf");
        JobSession session = waiting();
        setStatic(session, "1.0 bar");
        PrintedPages pages = session.printedPages();
        assertThrows(IllegalStateException.class, () -> pages.quote(pdf));
        assertFalse(Files.exists(pdf));
    }
}
