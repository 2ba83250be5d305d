// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.Finding;
import twinfeed.calculator.MarginInterval;
import twinfeed.calculator.PassProbability;

/** Chances from a fixed number of draws, each judged in truth: slow, and what the quicker way is measured by. */
final class PlainDraws {
    private final Trials trials;
    private final double[][] positions;
    private final double[][] margins;
    private final int[] passes;
    private final int[] answered;
    private final int count;

    PlainDraws(Trials trials, Draws draws, int count) {
        this.trials = trials;
        this.positions = new double[trials.inputs().list().size()][count];
        this.margins = new double[trials.checks()][count];
        this.passes = new int[trials.checks()];
        this.answered = new int[trials.checks()];
        this.count = count;
        draws.from(0, count, this::judge);
    }

    private void judge(int draw, double[] at) {
        for (int input = 0; input < at.length; input++) {
            positions[input][draw] = at[input];
        }
        Trial truth = trials.at(at);
        for (int check = 0; check < passes.length; check++) {
            passes[check] += truth.passes()[check] ? 1 : 0;
            answered[check] += Double.isNaN(truth.margins()[check]) ? 0 : 1;
            margins[check][draw] = truth.margins()[check];
        }
    }

    /** The nominal findings of the sampled checks with their chances, in their order. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (int check = 0; check < passes.length; check++) {
            findings.add(trials.nominal(check).withChance(chance(check)));
        }
        return findings;
    }

    private PassProbability chance(int check) {
        double chance = (double) passes[check] / count;
        if (answered[check] < count) {
            return new PassProbability(chance, MarginInterval.NONE);
        }
        return new PassProbability(
                chance,
                new MarginInterval(
                        Statistics.quantile(margins[check], PassProbability.DOUBT),
                        Statistics.upperQuantile(margins[check], PassProbability.DOUBT),
                        loudest(margins[check])));
    }

    /** The input whose square of correlation with the margin is largest: its share of the variance, to first order. */
    private String loudest(double[] values) {
        String path = "";
        double most = Statistics.LEAST_SHARE;
        for (int i = 0; i < positions.length; i++) {
            double share = Statistics.correlationSquared(positions[i], values);
            if (share > most) {
                most = share;
                path = trials.inputs().list().get(i).path();
            }
        }
        return path;
    }
}
