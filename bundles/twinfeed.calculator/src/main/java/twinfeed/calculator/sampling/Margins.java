// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Arrays;
import java.util.List;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Finding;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.Working;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.assessment.Outcome;

/** What the draws of an uncertainty run gave, check by check. */
final class Margins {
    private static final double LOW = 0.05;

    /** A check is too close to call where its chance lies between this share and the rest. */
    private static final double TOO_CLOSE = 0.05;

    private final OptionResult nominal;
    private final List<SampledInput> inputs;
    private final double[][] coordinates;
    private final double[][] margins;
    private final int[] passes;
    private final int[] answered;
    private int drawn;

    Margins(OptionResult nominal, List<SampledInput> inputs, int points) {
        int checks = nominal.findings().size();
        this.nominal = nominal;
        this.inputs = inputs;
        this.coordinates = new double[inputs.size()][points];
        this.margins = new double[checks][points];
        this.passes = new int[checks];
        this.answered = new int[checks];
    }

    /** Records one draw; findings come in the order of the nominal ones, for the same calculators ran. */
    void record(double[] point, OptionResult result) {
        int draw = drawn++;
        for (int i = 0; i < coordinates.length; i++) {
            coordinates[i][draw] = point[i];
        }
        for (int check = 0; check < margins.length; check++) {
            if (!isSampled(nominal.findings().get(check))) {
                continue;
            }
            Finding finding = matching(result, check);
            passes[check] += finding.outcome() == Outcome.PASSES || finding.outcome() == Outcome.NOT_APPLICABLE ? 1 : 0;
            Finding.Figures figures = finding.figures();
            if (figures != null) {
                margins[check][draw] = figures.margin();
                answered[check]++;
            }
        }
    }

    /**
     * Whether more draws would decide nothing: each deciding check is passed by all draws, by none, or by a share that is too far from where
     * "too close to call" begins for so many draws to mislead.
     */
    boolean settled() {
        double slack = slack();
        for (int check = 0; check < passes.length; check++) {
            double doubt = doubt(check);
            if (doubt > 0
                    && Math.abs(doubt - TOO_CLOSE) < slack
                    && nominal.findings().get(check).check().deciding()) {
                return false;
            }
        }
        return true;
    }

    /** Whether a deciding check is too close to call for certain, so that works which leave it so are no answer. */
    boolean doubtful() {
        double slack = slack();
        for (int check = 0; check < passes.length; check++) {
            if (doubt(check) > TOO_CLOSE + slack
                    && nominal.findings().get(check).check().deciding()
                    && isSampled(nominal.findings().get(check))) {
                return true;
            }
        }
        return false;
    }

    private double doubt(int check) {
        double share = (double) passes[check] / drawn;
        return Math.min(share, 1 - share);
    }

    /** Four standard deviations of a share of 5 % in so many plain draws; draws that are spread evenly miss by less. */
    private double slack() {
        return 4 * Math.sqrt(TOO_CLOSE * (1 - TOO_CLOSE) / drawn);
    }

    /** A calculator that breaks on a draw leaves findings out: the check then counts as not passing. */
    private Finding matching(OptionResult result, int check) {
        String key = nominal.findings().get(check).check().key();
        if (check < result.findings().size()
                && result.findings().get(check).check().key().equals(key)) {
            return result.findings().get(check);
        }
        return result.finding(key).orElse(UNANSWERED);
    }

    private static final Finding UNANSWERED = new Finding(
            "",
            Runner.BROKEN,
            Outcome.CANNOT_TELL,
            null,
            Condition.NONE,
            "",
            java.util.Map.of(),
            List.of(),
            "",
            Working::none,
            List.of(),
            List.of(),
            null);

    /** Whether tolerances can change what a finding says: a value was compared with a limit. */
    static boolean isSampled(Finding nominal) {
        boolean decided = nominal.outcome() == Outcome.PASSES || nominal.outcome() == Outcome.FAILS;
        return decided && nominal.check().sense() != LimitType.REPORT;
    }

    /** The nominal finding of a check with its chance; as it was where the question is not one of tolerance. */
    Finding judged(int check) {
        Finding finding = nominal.findings().get(check);
        if (!isSampled(finding)) {
            return finding;
        }
        double chance = (double) passes[check] / drawn;
        if (answered[check] < drawn) {
            return finding.withChance(new PassProbability(chance, 0, 0, ""));
        }
        double[] values = Arrays.copyOf(margins[check], drawn);
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return finding.withChance(
                new PassProbability(chance, quantile(sorted, LOW), quantile(sorted, 1 - LOW), loudest(values)));
    }

    /** Linear between order statistics. */
    private static double quantile(double[] sorted, double share) {
        double position = share * (sorted.length - 1);
        int below = (int) position;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
    }

    /** The input whose square of correlation with the margin is largest: its share of the variance, to first order. */
    private String loudest(double[] values) {
        String path = "";
        double most = 1e-3;
        for (int i = 0; i < coordinates.length; i++) {
            double share = correlationSquared(coordinates[i], values);
            if (share > most) {
                most = share;
                path = inputs.get(i).path();
            }
        }
        return path;
    }

    private static double correlationSquared(double[] x, double[] y) {
        double meanX = mean(x, y.length);
        double meanY = mean(y, y.length);
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (int i = 0; i < y.length; i++) {
            double dx = x[i] - meanX;
            double dy = y[i] - meanY;
            xy += dx * dy;
            xx += dx * dx;
            yy += dy * dy;
        }
        return xx == 0 || yy < 1e-24 ? 0 : xy * xy / (xx * yy);
    }

    /** A plain sum: this runs for every check with every reading, and rounding does not matter here. */
    private static double mean(double[] values, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += values[i];
        }
        return sum / count;
    }
}
