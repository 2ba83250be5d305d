// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Finding;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.sampling.Uncertainty;
import twinfeed.model.assessment.Outcome;

/**
 * Chances worked out with few judgements against plain draws, each judged, in random houses with tolerances.
 * {@code -Dtwinfeed.chances.houses=200 -Dtwinfeed.chances.draws=65536} make a campaign of it.
 */
class ChancesTest {
    private static final int HOUSES = Integer.getInteger("twinfeed.chances.houses", 6);

    /** In these, two pieces of cable of unseen method must both be better for the circuit to carry its load. */
    private static final long[] UNSEEN_TOGETHER = {142, 174};

    private static final int DRAWS = Integer.getInteger("twinfeed.chances.draws", 4096);

    /** Two points for the quick way, and three standard deviations of so many plain draws, which are spread evenly and miss by less. */
    private static final double TOLERANCE = 0.02 + 1.5 * Math.sqrt(0.25 / DRAWS);

    private static final Runner RUNNER = new Runner(calculators(), (mean, spread, month, southern) -> mean);

    private static List<Calculator> calculators() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return found;
    }

    @Test
    void chancesAreThoseOfPlainDraws() {
        List<String> differences = new ArrayList<>();
        int compared = 0;
        int open = 0;
        double worst = 0;
        for (long seed : houses()) {
            RandomHouse house = RandomHouse.of(seed);
            OptionResult quick = Uncertainty.byNeed(RUNNER).judge(house.survey(), house.candidate());
            OptionResult plain = Uncertainty.plain(RUNNER, DRAWS, 5).judge(house.survey(), house.candidate());
            for (int check = 0; check < plain.findings().size(); check++) {
                Finding truth = plain.findings().get(check);
                PassProbability chance = truth.chance();
                if (chance == null) {
                    assertEquals(truth.outcome(), quick.findings().get(check).outcome());
                    continue;
                }
                PassProbability said = quick.findings().get(check).chance();
                assertNotNull(said);
                compared++;
                open += chance.passes() > 0 && chance.passes() < 1 ? 1 : 0;
                double off = Math.abs(said.passes() - chance.passes());
                worst = Math.max(worst, off);
                if (off > TOLERANCE || changesTheAnswer(truth, quick.findings().get(check))) {
                    differences.add("house " + seed + ", " + truth.check().key() + ": " + said.passes() + " by need, "
                            + chance.passes() + " by plain draws");
                }
            }
        }
        System.out.println(
                "chances: " + compared + " compared, " + open + " of them neither 0 nor 1, farthest off " + worst);
        assertEquals(List.of(), differences);
        assertTrue(open >= HOUSES / 2, "open chances: " + open);
    }

    private static long[] houses() {
        LongStream more = LongStream.of(UNSEEN_TOGETHER).filter(seed -> seed >= HOUSES);
        return LongStream.concat(LongStream.range(0, HOUSES), more).toArray();
    }

    /** Outcomes are the same but where the chance lies by the threshold. */
    private static boolean changesTheAnswer(Finding plain, Finding quick) {
        PassProbability chance = plain.chance();
        double doubt = chance == null ? 0 : Math.min(chance.passes(), 1 - chance.passes());
        boolean near = Math.abs(doubt - PassProbability.DOUBT) < TOLERANCE;
        return !near && (plain.outcome() == Outcome.TOO_CLOSE) != (quick.outcome() == Outcome.TOO_CLOSE);
    }
}
