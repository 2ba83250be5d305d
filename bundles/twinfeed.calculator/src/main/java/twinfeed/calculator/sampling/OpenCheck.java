// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.PassProbability;

/**
 * The chance of one check whose answer the tolerances can change.
 *
 * <p>Its response says for each of many draws whether it passes, but where the margin comes out nearer to 0 than the response was seen to err;
 * of those draws some are judged in truth, until it is known well enough how many pass. Where the check has no margin, no draw is sure.
 */
final class OpenCheck {
    /** An error twice as large as any seen is taken for possible. */
    private static final double ROOM = 2;

    /** A truth so many times as far off as the farthest before changes which draws are sure. */
    private static final double WIDER = 1.2;

    private final int check;
    private final boolean deciding;
    private final double[] predicted;
    private boolean regular;
    private final Map<Integer, Double> truths = new LinkedHashMap<>();
    private double farthestOff;
    private int surePasses;
    private OpenDraws draws;

    /**
     * An open check.
     *
     * @param check its number among the sampled ones
     * @param deciding whether it decides
     * @param response how its margin answers to the inputs
     * @param predicted what the response says of each draw
     * @param compared the truth of the first draws
     */
    OpenCheck(int check, boolean deciding, Response response, double[] predicted, Trial[] compared) {
        this.check = check;
        this.deciding = deciding;
        this.predicted = predicted;
        this.regular = response.regular() && Arrays.stream(compared).allMatch(truth -> truth.isRegular(check));
        this.farthestOff = regular ? farthestOff(compared) : 0;
        this.draws = regular ? nearLimit(ROOM * farthestOff) : new CountedDraws(predicted);
    }

    private double farthestOff(Trial[] compared) {
        double error = 0;
        for (int draw = 0; draw < compared.length; draw++) {
            error = Math.max(error, Math.abs(compared[draw].margins()[check] - predicted[draw]));
        }
        return error;
    }

    private DrawsNearLimit nearLimit(double band) {
        surePasses = 0;
        int[] near = new int[predicted.length];
        int count = 0;
        for (int draw = 0; draw < predicted.length; draw++) {
            if (Math.abs(predicted[draw]) <= band) {
                near[count++] = draw;
            } else if (predicted[draw] > 0) {
                surePasses++;
            }
        }
        return new DrawsNearLimit(Arrays.copyOf(near, count), predicted, truths);
    }

    /** The draw to be judged in truth next. */
    int next() {
        return draws.next();
    }

    /** Learns the truth of any draw. */
    void learn(int draw, Trial truth) {
        if (regular && !truth.isRegular(check)) {
            // It has no margin after all: what was made of margins does not count, and the draws are asked in their
            // order.
            regular = false;
            surePasses = 0;
            draws = new CountedDraws(predicted);
        }
        double margin = truth.margins()[check];
        draws.learn(draw, margin, truth.passes()[check]);
        if (regular && truths.putIfAbsent(draw, margin) == null) {
            widen(Math.abs(margin - predicted[draw]));
        }
    }

    /** Where a truth lies farther off than any before, more draws come out too near to the limit to be sure of. */
    private void widen(double off) {
        if (off > WIDER * farthestOff) {
            farthestOff = off;
            draws = nearLimit(ROOM * off);
        }
    }

    /** The chance that the check passes, 0 to 1. */
    double chance() {
        return (surePasses + draws.passes()) / predicted.length;
    }

    /** The standard deviation of the chance. */
    double deviation() {
        return draws.deviation() / predicted.length;
    }

    /** Whether a deciding check is too close to call, by more than so many standard deviations. */
    boolean doubtful(int deviations) {
        return deciding && doubt() - PassProbability.DOUBT > deviations * deviation();
    }

    /** Whether it is known, by more than so many standard deviations, if it is too close to call. */
    boolean isCertain(int deviations) {
        return Math.abs(doubt() - PassProbability.DOUBT) > deviations * deviation();
    }

    private double doubt() {
        double chance = chance();
        return Math.min(chance, 1 - chance);
    }

    /** The open check whose chance is known least; none if all are known well enough. */
    static @Nullable OpenCheck leastKnown(Iterable<OpenCheck> all, double accuracy) {
        OpenCheck most = null;
        for (OpenCheck each : all) {
            if (each.deviation() > (most == null ? accuracy : most.deviation())) {
                most = each;
            }
        }
        return most;
    }
}
