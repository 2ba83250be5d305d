// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.OpenJob;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Pressure;
import twinfeed.usecase.TwinfeedService;

/** Where a job stands, in short phrases. */
final class JobStatusTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private JobSession open(JobServices services, TwinfeedService service) {
        Path file = folder.resolve("alder-beck.job");
        Threads nothing = new Threads(work -> {}, work -> {}, Runnable::run);
        return new JobSession(
                new OpenJob(service.open(file, null), FileFingerprint.of(file), false), services, nothing);
    }

    @Test
    void sayWhatIsSavedAndByWhatItIsPriced() throws Exception {
        DemoFiles.copyInto(folder);
        TwinfeedService service = DemoFiles.service();
        JobServices services = new JobServices(service, CLOCK, Locale.UK);
        JobSession session = open(services, service);
        session.catalogue().setTitle("Heaters on offer");
        session.catalogue().setDate(null);
        JobStatus status = new JobStatus(session, new Words(Locale.UK));
        assertEquals(
                List.of("alder-beck: saved", "Quote: draft", "No price book", "Heaters: Heaters on offer"),
                status.phrases());
        Path book = folder.resolve("prices.csv");
        JobServices.Prices prices = new JobServices.Prices(book, service.book(book));
        prices.book().setTitle("");
        prices.book().setDate(java.time.LocalDate.of(2026, 2, 1));
        services.usePrices(prices);
        assertEquals(
                "Prices: prices.csv of 1 Feb 2026",
                status.phrases().get(2),
                "a book without a title is known by its file");
        ReadingPath path = ReadingPath.of(SurveyPackage.Literals.SURVEY, "water.test.staticPressure");
        session.edits().set(session.survey(), path.steps(), Pressure.valueOf("2.9 bar"));
        assertEquals("alder-beck: changed, not saved", status.phrases().get(0));
        session.edits().undo();
        assertEquals("alder-beck: saved", status.phrases().get(0));
    }

    @Test
    void statusIsInGerman() throws Exception {
        DemoFiles.copyInto(folder);
        TwinfeedService service = DemoFiles.service();
        JobSession session = open(new JobServices(service, CLOCK, Locale.GERMANY), service);
        assertEquals(
                List.of("alder-beck: gespeichert", "Angebot: Entwurf", "Keine Preisliste"),
                new JobStatus(session, new Words(Locale.GERMANY)).phrases().subList(0, 3));
    }
}
