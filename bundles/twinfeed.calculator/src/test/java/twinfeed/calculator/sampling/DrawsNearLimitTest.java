// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is known of draws near a limit, step by step, against the same worked out plainly from all truths at once. */
class DrawsNearLimitTest {
    private static final int ALL = 64;

    /** What the response says of draws, in steps of so much, and what is true: past a turn the other way, and now and then exactly the limit. */
    private record House(double[] predicted, double[] truth) {
        static House of(Random random, double step, double turn) {
            double[] predicted = random.doubles(ALL, -1, 1)
                    .map(each -> Math.rint(each / step) * step + 0.0) // no negative zero
                    .toArray();
            double[] truth = new double[ALL];
            for (int draw = 0; draw < ALL; draw++) {
                double beyond = Math.max(0, predicted[draw] - turn);
                double margin = predicted[draw] - 2 * beyond + random.nextGaussian() / 5;
                truth[draw] = random.nextInt(6) == 0 ? 0 : margin;
            }
            return new House(predicted, truth);
        }
    }

    private static int[] near(Random random) {
        return IntStream.range(0, ALL).filter(draw -> random.nextInt(4) > 0).toArray();
    }

    private static void same(PlainNearLimit plain, DrawsNearLimit draws) {
        assertEquals(plain.passes(), draws.passes(), 1e-9);
        assertEquals(plain.deviation(), draws.deviation(), 1e-9);
    }

    /** In steps of an eighth, many draws have the same margin. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 0.125, 0.5})
    void eachTruthInAnyOrderTellsWhatAllOfThemTell(double step) {
        for (int seed = 0; seed < 8; seed++) {
            Random random = new Random(seed);
            House house = House.of(random, step, 0.3);
            int[] near = near(random);
            DrawsNearLimit draws = new DrawsNearLimit(near, house.predicted, Map.of());
            PlainNearLimit plain = new PlainNearLimit(near, house.predicted);
            same(plain, draws);
            for (int i = 0; i < ALL; i++) {
                int draw = random.nextInt(ALL);
                draws.learn(draw, house.truth[draw], house.truth[draw] >= 0);
                plain.learn(draw, house.truth[draw]);
                same(plain, draws);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 0.125})
    void theDrawsThatAreAskedStandWhereTheDoubtsAddUpToEvenMarks(double step) {
        for (int seed = 0; seed < 10; seed++) {
            Random random = new Random(seed);
            House house = House.of(random, step, 0.1);
            int[] near = near(random);
            Map<Integer, Double> before = new HashMap<>();
            PlainNearLimit plain = new PlainNearLimit(near, house.predicted);
            for (int draw = 0; draw < 2 * seed; draw++) {
                before.put(draw, house.truth[draw]);
                plain.learn(draw, house.truth[draw]);
            }
            DrawsNearLimit draws = new DrawsNearLimit(near, house.predicted, before);
            same(plain, draws);
            for (int plan = 0; draws.deviation() > 0; plan++) {
                List<Integer> expected = plain.plan(plan);
                List<Integer> asked = new ArrayList<>();
                for (int i = 0; i < expected.size(); i++) {
                    int draw = draws.next();
                    asked.add(draw);
                    draws.learn(draw, house.truth[draw], house.truth[draw] >= 0);
                    plain.learn(draw, house.truth[draw]);
                }
                assertEquals(expected, asked, "plan " + plan + " of seed " + seed);
                same(plain, draws);
            }
        }
    }

    /** Eighty draws of which nothing is known: each eighth has ten, and its middle one is asked. */
    @Test
    void theFirstThatAreAskedAreSpreadEvenly() {
        double[] predicted = IntStream.range(0, 80).mapToDouble(i -> i - 40.5).toArray();
        DrawsNearLimit draws = new DrawsNearLimit(IntStream.range(0, 80).toArray(), predicted, Map.of());
        assertEquals(40 - 1, draws.passes(), "of -40.5 to 38.5");
        for (int middle = 5; middle < 80; middle += 10) {
            int next = draws.next();
            assertEquals(middle, next, 1);
            draws.learn(next, 1, true);
        }
        assertEquals(80, draws.passes(), 1e-9, "eight truths, and all pass");
    }
}
