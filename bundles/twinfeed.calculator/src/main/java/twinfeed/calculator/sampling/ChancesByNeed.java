// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Finding;
import twinfeed.calculator.MarginInterval;
import twinfeed.calculator.PassProbability;

/**
 * Chances with as few judgements of the house as their accuracy needs. Each uncertain input is first moved alone, which gives the response
 * of each check. A check that its response decides needs no draw. For the others the response judges thousands of draws, and the house itself only those
 * that come out near the limit.
 */
final class ChancesByNeed {
    /** Draws that a response judges. */
    private static final int DRAWS = 4096;

    /** Draws for the spread of a margin. */
    private static final int MARGINS = 512;

    /** Draws at which the responses are compared with the truth. */
    private static final int COMPARED = 16;

    /** Standard deviation that a chance may have at the end. */
    private static final double ACCURACY = 0.005;

    /** The same for a set of works, the last of which is offered. */
    private static final double ACCURACY_OF_WORKS = 0.004;

    /** A check is too close for certain where its chance says so by as many standard deviations. */
    private static final int FOR_CERTAIN = 4;

    /** So many draws are judged in truth at most. */
    private static final int MOST = 2048;

    private final Trials trials;
    private Trials undecided;
    private final FirstDraws draws;
    private final @Nullable Predicate<List<Finding>> promising;
    private final List<Response> responses;
    private final Map<Integer, OpenCheck> open = new TreeMap<>();
    private final Map<Integer, Trial> judged = new HashMap<>();

    /**
     * Chances.
     *
     * @param promising for a set of works: whether it may be the answer, by findings that are sure and chances that may be rough; those of one that
     *     is not stay so. Null without works.
     */
    ChancesByNeed(Trials trials, FirstDraws draws, @Nullable Predicate<List<Finding>> promising) {
        this.trials = trials;
        this.undecided = trials;
        this.draws = draws;
        this.promising = promising;
        this.responses = Response.of(trials);
    }

    /** The nominal findings of the sampled checks with their chances, in their order. */
    List<Finding> findings() {
        if (responses.stream().anyMatch(response -> !response.decided())) {
            draw();
        }
        return known();
    }

    /** With the chances as far as they are known. */
    private List<Finding> known() {
        List<String> paths =
                trials.inputs().list().stream().map(SampledInput::path).toList();
        List<Finding> findings = new ArrayList<>();
        for (int check = 0; check < trials.checks(); check++) {
            findings.add(trials.nominal(check).withChance(chance(check, paths)));
        }
        return findings;
    }

    private void draw() {
        undecided = trials.asking(IntStream.range(0, trials.checks())
                .filter(check -> !responses.get(check).decided())
                .boxed()
                .toList());
        Trial[] compared = new Trial[COMPARED];
        Arrays.setAll(compared, this::truth);
        for (int check = 0; check < trials.checks(); check++) {
            Response response = responses.get(check);
            if (!response.decided()) {
                boolean deciding = trials.nominal(check).check().deciding();
                double[] predicted = response.margins(draws.columns(DRAWS), DRAWS);
                open.put(check, new OpenCheck(check, deciding, response, predicted, compared));
            }
        }
        for (int draw = 0; draw < COMPARED; draw++) {
            learn(draw);
        }
        if (promising == null) {
            drawUntil(ACCURACY, open.values());
            return;
        }
        drawUntil(ACCURACY, () -> open.values().stream()
                .filter(each -> !each.isCertain(FOR_CERTAIN))
                .iterator());
        if (!doubtful(FOR_CERTAIN) && promising.test(known())) {
            drawUntil(ACCURACY, open.values());
            if (!doubtful(0)) {
                drawUntil(ACCURACY_OF_WORKS, open.values());
            }
        }
    }

    private void drawUntil(double accuracy, Iterable<OpenCheck> which) {
        OpenCheck next = OpenCheck.leastKnown(which, accuracy);
        while (next != null && judged.size() < MOST && !(promising != null && doubtful(FOR_CERTAIN))) {
            learn(next.next());
            next = OpenCheck.leastKnown(which, accuracy);
        }
    }

    private void learn(int draw) {
        Trial truth = truth(draw);
        open.values().forEach(each -> each.learn(draw, truth));
    }

    /** Works that leave a deciding check too close to call are no answer, and what else they bring about matters no more. */
    private boolean doubtful(int deviations) {
        return open.values().stream().anyMatch(each -> each.doubtful(deviations));
    }

    private Trial truth(int draw) {
        return judged.computeIfAbsent(draw, number -> undecided.at(draws.first(DRAWS)[number]));
    }

    private PassProbability chance(int check, List<String> paths) {
        Response response = responses.get(check);
        OpenCheck known = open.get(check);
        double passes = known == null ? (response.passesNominally() ? 1 : 0) : known.chance();
        if (!response.regular()) {
            return new PassProbability(passes, MarginInterval.NONE);
        }
        FirstDraws shared = draws;
        return new PassProbability(passes, () -> interval(response, shared.columns(MARGINS), paths));
    }

    /** The interval of a margin; what works it out later keeps hold of the response alone, not of the house. */
    private static MarginInterval interval(Response response, double[][] columns, List<String> paths) {
        double[] margins = response.margins(columns, MARGINS);
        return new MarginInterval(
                Statistics.quantile(margins, PassProbability.DOUBT),
                Statistics.upperQuantile(margins, PassProbability.DOUBT),
                loudest(response, columns, margins, paths));
    }

    /** The input whose effect goes most along with the margin: its share of the variance, to first order. */
    private static String loudest(Response response, double[][] columns, double[] margins, List<String> paths) {
        String path = "";
        double most = Statistics.LEAST_SHARE;
        for (int i : response.wide()) {
            double[] additions = response.additions(i, columns, margins.length);
            double share = Statistics.correlationSquared(additions, margins);
            if (share > most) {
                most = share;
                path = paths.get(response.input(i));
            }
        }
        return path;
    }
}
