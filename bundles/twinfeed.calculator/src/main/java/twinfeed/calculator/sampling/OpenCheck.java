// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.PassProbability;

/**
 * The chance of one check whose answer the tolerances can change.
 *
 * <p>Its response says for each of many draws whether it passes, but where the margin comes out nearer to 0 than the response was seen to err;
 * of those draws a share is judged in truth, evenly spread, until it is known well enough how often the response is wrong.
 */
final class OpenCheck {
    /** An error twice as large as any seen is taken for possible. */
    private static final double ROOM = 2;

    private final int check;
    private final boolean deciding;
    private final Response response;
    private final double[] predicted;
    private boolean regular;
    private double error;
    private int surePasses;
    private int[] near = {};
    private int asked;
    private int passesMore;
    private int turned;

    /**
     * An open check.
     *
     * @param check its number among the sampled ones
     * @param deciding whether it decides
     * @param response how its margin answers to the inputs
     * @param draws how many draws there are
     */
    OpenCheck(int check, boolean deciding, Response response, int draws) {
        this.check = check;
        this.deciding = deciding;
        this.response = response;
        this.predicted = new double[draws];
        this.regular = response.regular();
    }

    int check() {
        return check;
    }

    Response response() {
        return response;
    }

    /** The share of draws of which the response is not sure. */
    double nearShare() {
        return (double) near.length / predicted.length;
    }

    /** Takes note of what the response says of all draws. */
    void predict(double[][] positions) {
        for (int draw = 0; draw < predicted.length; draw++) {
            predicted[draw] = response.at(positions[draw]);
        }
    }

    /** Compares the response with the truth; the first draw begins anew. */
    void compare(int draw, Trial truth) {
        double margin = truth.margins()[check];
        error = draw == 0 ? 0 : error;
        if (Double.isNaN(margin) || margin >= 0 != truth.passes()[check]) {
            regular = false;
        } else {
            error = Math.max(error, Math.abs(margin - predicted[draw]));
        }
    }

    /** Sorts the draws into those of which the response is sure and those that are near the limit. */
    void sort() {
        asked = 0;
        passesMore = 0;
        turned = 0;
        double band = ROOM * error;
        surePasses = 0;
        near = new int[predicted.length];
        int count = 0;
        for (int draw = 0; draw < predicted.length; draw++) {
            if (!regular || Math.abs(predicted[draw]) <= band) {
                near[count++] = draw;
            } else if (predicted[draw] > 0) {
                surePasses++;
            }
        }
        near = Arrays.copyOf(near, count);
    }

    /** The draw to be judged in truth next. */
    int next() {
        return near[asked];
    }

    /** Takes the truth of the draw that was next. */
    void take(Trial truth) {
        boolean passes = truth.passes()[check];
        if (passes != (predicted[near[asked]] >= 0)) {
            turned++;
            passesMore += passes ? 1 : -1;
        }
        asked++;
    }

    /** The chance that the check passes: what the response says, corrected by what the truth said otherwise of the draws near the limit. */
    double chance() {
        double correction = asked == 0 ? 0 : (double) passesMore / asked * near.length;
        double passes = surePasses + predictedNearPasses() + correction;
        return Math.min(1, Math.max(0, passes / predicted.length));
    }

    private double predictedNearPasses() {
        return Arrays.stream(near).filter(draw -> predicted[draw] >= 0).count();
    }

    /** The standard deviation of the chance: that of the share of draws in which the truth says otherwise than the response, one more assumed. */
    double deviation() {
        double share = (double) near.length / predicted.length;
        if (asked == near.length) {
            return 0;
        }
        if (asked == 0) {
            return share;
        }
        double otherwise = (turned + 1.0) / (asked + 2.0);
        double rest = 1 - (double) asked / near.length;
        return share * Math.sqrt(otherwise / asked * rest);
    }

    /** Whether a deciding check is too close to call, by more than so many standard deviations. */
    boolean doubtful(int deviations) {
        return deciding && doubt() - PassProbability.DOUBT > deviations * deviation();
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
