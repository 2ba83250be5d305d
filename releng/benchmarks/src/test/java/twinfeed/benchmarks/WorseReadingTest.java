// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.stream.LongStream;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Check;
import twinfeed.calculator.Finding;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;

/**
 * A worse reading never gives a better verdict: longer cable, less pressure, larger load, colder water, and readings that advice alone
 * uses, such as a loop impedance beyond what operators declare or frail users, over random houses. Once check by
 * check in the house as it is, once through the whole assessment with tolerances and the search for works.
 */
class WorseReadingTest {
    /** Houses as they are, and houses through the whole assessment; more by the system properties. */
    private static final int HOUSES = Integer.getInteger("twinfeed.worse.houses", 120);

    private static final int WHOLE = Integer.getInteger("twinfeed.worse.whole", 8);

    private static final double[] SHARES = {0.03, 0.15, 0.5};

    /** Best first: what nobody can tell is better than what is known to fail. */
    private static final List<Verdict> BEST_FIRST = List.of(
            Verdict.SUITS, Verdict.SUITS_WITH_WORK, Verdict.CANNOT_TELL, Verdict.NOT_AS_IT_IS, Verdict.DOES_NOT_SUIT);

    private static final Runner RUNNER = new Runner(calculators(), (mean, spread, month, southern) -> mean);

    private static List<Calculator> calculators() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return found;
    }

    private static List<String> failing(OptionResult result) {
        return result.findings().stream()
                .filter(each -> Check.deciding(each.check().kind()) && each.outcome() == Outcome.FAILS)
                .map(each -> each.check().key())
                .toList();
    }

    @Test
    void aWorseReadingMendsNoCheck() {
        List<String> better = LongStream.range(0, HOUSES)
                .parallel()
                .boxed()
                .flatMap(seed -> mended(seed).stream())
                .toList();
        assertEquals(List.of(), better);
    }

    private static List<String> mended(long seed) {
        RandomHouse house = RandomHouse.of(seed);
        OptionResult before = RUNNER.judge(house.survey(), house.candidate());
        List<String> better = new ArrayList<>();
        for (WorseReading worse : WorseReading.values()) {
            for (double share : SHARES) {
                OptionResult after = RUNNER.judge(worse.of(house.survey(), share), house.candidate());
                for (String key : failing(before)) {
                    Optional<Finding> finding = after.finding(key);
                    if (finding.isEmpty() || finding.get().outcome() != Outcome.FAILS) {
                        better.add("house " + seed + ", " + worse + " by " + share + ": " + key);
                    }
                }
                if (rank(after.verdict()) < rank(before.verdict())) {
                    better.add("house " + seed + ", " + worse + " by " + share + ": " + after.verdict());
                }
            }
        }
        return better;
    }

    private static int rank(Verdict verdict) {
        return BEST_FIRST.indexOf(verdict);
    }

    @Test
    void aWorseReadingNeverGivesABetterVerdict() {
        TwinfeedService service = TwinfeedService.onClassPath();
        PriceBook book = service.book(Books.DEMO.resolve("prices.csv"));
        Map<Verdict, Integer> seen = new EnumMap<>(Verdict.class);
        List<String> better = new ArrayList<>();
        for (long seed = 0; seed < WHOLE; seed++) {
            RandomHouse house = RandomHouse.of(1000 + seed);
            Verdict before = verdict(service, book, house, house.survey());
            seen.merge(before, 1, Integer::sum);
            for (WorseReading worse : WorseReading.values()) {
                Verdict after = verdict(service, book, house, worse.of(house.survey(), SHARES[(int) (seed % 3)]));
                if (rank(after) < rank(before)) {
                    better.add("house " + (1000 + seed) + ", " + worse + ": " + before + " -> " + after);
                }
            }
        }
        System.out.println("worse readings through the whole assessment, verdicts before: " + seen);
        assertEquals(List.of(), better);
        assertTrue(seen.size() > 1, "houses of one verdict say little: " + seen);
    }

    private static Verdict verdict(TwinfeedService service, PriceBook book, RandomHouse house, Survey survey) {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        catalogue.getHeaters().add(EcoreUtil.copy(house.candidate().heater()));
        Job job = JobFile.create();
        job.setSurvey(EcoreUtil.copy(survey));
        job.getSurvey().getCandidates().add("h");
        OpenedJob opened = new OpenedJob(Path.of("random.job"), job, catalogue, List.of());
        AssessedJob judged = service.judge(opened, book, "h", Locale.UK);
        return judged.plans().get(0).verdict();
    }
}
