// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import twinfeed.calculator.Finding;
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

    /** Where a response is unsure of a larger share of the draws, its readings are moved in pairs too. */
    private static final double UNSURE = 0.04;

    /** So many readings of a check are moved in pairs. */
    private static final int STRONGEST = 6;

    /** Standard deviation that a chance may have at the end. */
    private static final double ACCURACY = 0.008;

    /** The same for a set of works, the last of which is offered. */
    private static final double ACCURACY_OF_WORKS = 0.005;

    /** So many draws are judged in truth at most. */
    private static final int MOST = 2048;

    private final Trials trials;
    private final FirstDraws draws;
    private final boolean ofWorks;
    private final List<Response> responses;
    private final Map<Integer, OpenCheck> open = new TreeMap<>();
    private final Map<Integer, Trial> judged = new TreeMap<>();

    ChancesByNeed(Trials trials, FirstDraws draws, boolean ofWorks) {
        this.trials = trials;
        this.draws = draws;
        this.ofWorks = ofWorks;
        this.responses = Response.of(trials);
        for (int check = 0; check < trials.checks(); check++) {
            if (!responses.get(check).decided()) {
                boolean deciding = trials.nominal(check).check().deciding();
                open.put(check, new OpenCheck(check, deciding, responses.get(check), DRAWS));
            }
        }
    }

    /** The nominal findings of the sampled checks with their chances, in their order. */
    List<Finding> findings() {
        if (!open.isEmpty()) {
            draw();
        }
        double[][] positions = Arrays.copyOf(draws.first(MARGINS), MARGINS);
        List<Finding> findings = new ArrayList<>();
        for (int check = 0; check < trials.checks(); check++) {
            findings.add(trials.nominal(check).withChance(chance(check, positions)));
        }
        return findings;
    }

    private void draw() {
        List<OpenCheck> checks = List.copyOf(open.values());
        predict(checks);
        List<OpenCheck> unsure =
                checks.stream().filter(each -> each.nearShare() > UNSURE).toList();
        if (!unsure.isEmpty()) {
            unsure.forEach(this::pair);
            predict(unsure);
        }
        drawUntil(checks, ACCURACY);
        if (ofWorks && !doubtful(checks)) {
            drawUntil(checks, ACCURACY_OF_WORKS);
        }
    }

    private void drawUntil(List<OpenCheck> checks, double accuracy) {
        OpenCheck next = OpenCheck.leastKnown(checks, accuracy);
        while (next != null && judged.size() < MOST && !(ofWorks && certainlyDoubtful(checks))) {
            next.take(truth(next.next()));
            next = OpenCheck.leastKnown(checks, accuracy);
        }
    }

    private void predict(List<OpenCheck> checks) {
        double[][] positions = draws.first(DRAWS);
        checks.forEach(each -> each.predict(positions));
        for (int draw = 0; draw < COMPARED; draw++) {
            Trial truth = truth(draw);
            for (OpenCheck each : checks) {
                each.compare(draw, truth);
            }
        }
        checks.forEach(OpenCheck::sort);
    }

    /** Moves the strongest readings of a check two at a time towards where its answer is in danger. */
    private void pair(OpenCheck check) {
        Response response = check.response();
        List<Integer> strongest = response.strongest(STRONGEST);
        for (int one : strongest) {
            for (int other : strongest) {
                if (one < other) {
                    double[] positions = new double[trials.inputs().list().size()];
                    positions[one] = response.dangerousSide(one);
                    positions[other] = response.dangerousSide(other);
                    response.addPair(one, other, positions, trials.at(positions).margins()[check.check()]);
                }
            }
        }
    }

    /** Works that leave a deciding check too close to call are no answer, and what else they bring about matters no more. */
    private static boolean doubtful(List<OpenCheck> checks) {
        return checks.stream().anyMatch(each -> each.doubtful(0));
    }

    private static boolean certainlyDoubtful(List<OpenCheck> checks) {
        return checks.stream().anyMatch(each -> each.doubtful(4));
    }

    private Trial truth(int draw) {
        return judged.computeIfAbsent(draw, number -> trials.at(draws.first(DRAWS)[number]));
    }

    private PassProbability chance(int check, double[][] positions) {
        Response response = responses.get(check);
        OpenCheck undecided = open.get(check);
        double passes = undecided == null ? (response.passesNominally() ? 1 : 0) : undecided.chance();
        if (!response.regular()) {
            return new PassProbability(passes, 0, 0, "");
        }
        double[] margins = new double[positions.length];
        for (int draw = 0; draw < margins.length; draw++) {
            margins[draw] = response.at(positions[draw]);
        }
        double[] sorted = margins.clone();
        Arrays.sort(sorted);
        return new PassProbability(
                passes,
                Statistics.quantile(sorted, PassProbability.DOUBT),
                Statistics.quantile(sorted, 1 - PassProbability.DOUBT),
                loudest(response, positions, margins));
    }

    /** The input whose effect goes most along with the margin: its share of the variance, to first order. */
    private String loudest(Response response, double[][] positions, double[] margins) {
        String path = "";
        double most = Statistics.LEAST_SHARE;
        double[] additions = new double[margins.length];
        for (int i = 0; i < response.size(); i++) {
            for (int draw = 0; draw < additions.length; draw++) {
                additions[draw] = response.addition(i, positions[draw]);
            }
            double share = Statistics.correlationSquared(additions, margins);
            if (share > most) {
                most = share;
                path = trials.inputs().list().get(response.input(i)).path();
            }
        }
        return path;
    }
}
