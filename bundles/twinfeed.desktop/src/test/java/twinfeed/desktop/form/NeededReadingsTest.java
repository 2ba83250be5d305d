// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.NewJob;
import twinfeed.desktop.session.OpenJob;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.model.check.ModelPath;
import twinfeed.model.io.FileFingerprint;
import twinfeed.usecase.TwinfeedService;

/** Where the key for the next needed reading leads in a job without any. */
final class NeededReadingsTest {
    @TempDir
    Path folder;

    private final Words words = new Words(Locale.UK);
    private JobSession session;

    @BeforeEach
    void begin() throws Exception {
        DemoFiles.copyInto(folder);
        Path file = folder.resolve("blank.job");
        NewJob.write(file, folder.resolve("heaters.catalogue"));
        TwinfeedService service = DemoFiles.service();
        session = new JobSession(
                new OpenJob(service.open(file, null), FileFingerprint.of(file), false),
                new JobServices(service, Clock.systemUTC(), Locale.UK),
                new Threads(Runnable::run, work -> {}, Runnable::run));
        session.recalculate();
    }

    private NeededReadings needed() {
        return NeededReadings.of(SurveyPages.all(), session.survey(), Remarks.of(session, words));
    }

    private static String key(FieldLocation place) {
        return ModelPath.of(place.root()) + "." + place.path();
    }

    @Test
    void keyGoesThroughAllOfThemOnceAndBegins() {
        NeededReadings needed = needed();
        List<String> seen = new ArrayList<>();
        String at = "";
        for (int i = 0; i < needed.size(); i++) {
            at = key(needed.next(at).orElseThrow());
            assertTrue(!seen.contains(at), "twice: " + at);
            seen.add(at);
        }
        assertTrue(seen.size() > 5, "needed: " + seen);
        assertEquals(seen.get(0), key(needed.next(at).orElseThrow()), "after the last the first again");
    }

    @Test
    void pageOnWhichNobodyIsYetBeginsItself() {
        Page supply = SurveyPages.all().stream()
                .filter(page -> page.key().equals("supply"))
                .findFirst()
                .orElseThrow();
        String first = key(needed().nextFrom(supply, session.survey()).orElseThrow());
        assertTrue(first.startsWith("survey.electricity."), first);
    }

    @Test
    void takenReadingIsNeededNoMore() {
        NeededReadings before = needed();
        FieldLocation place = before.next("survey.electricity").orElseThrow();
        ReadingPath hardness = ReadingPath.of(session.survey().eClass(), "water.hardness");
        session.edits().set(session.survey(), hardness.steps(), twinfeed.units.Concentration.valueOf("150 mg/L"));
        String at = "";
        List<String> seen = new ArrayList<>();
        NeededReadings after = needed();
        for (int i = 0; i < after.size(); i++) {
            at = key(after.next(at).orElseThrow());
            seen.add(at);
        }
        assertTrue(!seen.contains("survey.water.hardness"), seen + " after " + key(place));
    }

    @Test
    void everyNeededReadingHasAFieldThatItsPageAsksFor() {
        NeededReadings needed = needed();
        String at = "";
        for (int i = 0; i < needed.size(); i++) {
            FieldLocation place = needed.next(at).orElseThrow();
            at = key(place);
            assertTrue(
                    SurveyPages.all().stream().anyMatch(page -> page.asks(session.survey(), place)),
                    "asked for: " + at);
        }
    }
}
