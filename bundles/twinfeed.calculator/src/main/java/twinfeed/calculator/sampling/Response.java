// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the margin of one check answers to each input alone: the margin with the readings as taken, and the sum of the inputs' effects. What
 * two inputs do together beyond that is not in it, so it is an estimate; {@link #decided} leaves room for that.
 *
 * <p>A check is regular if it gave figures in every trial and passed where its margin was 0 or more; of others only the trials themselves
 * say something.
 */
final class Response {
    /**
     * A margin is out of doubt if it keeps its sign when all inputs stand together at their worst, and that by half as much again. The
     * margins of all checks are sums and products of readings whose tolerances are at most a fifth of them; what two of them do together is then at
     * most a tenth of what they do apart.
     */
    private static final double ROOM = 1.5;

    private final int check;
    private final double nominal;
    private final boolean passesNominally;
    private final List<Effect> effects = new ArrayList<>();
    private final List<Integer> inputs = new ArrayList<>();
    private @Nullable Together together;
    private double[] beyond = {};
    private double least;
    private double largest;
    private double leastTogether;
    private double largestTogether;
    private boolean regular;
    private boolean wavers;

    Response(int check, Trial nominal) {
        this.check = check;
        this.nominal = nominal.margins()[check];
        this.passesNominally = nominal.passes()[check];
        this.regular = nominal.isRegular(check);
    }

    /** Adds what an input does. */
    void add(int input, Effect effect) {
        if (effect.least() != 0 || effect.largest() != 0) {
            inputs.add(input);
            effects.add(effect);
            least += effect.least();
            largest += effect.largest();
        }
    }

    /** Takes note of what the check said in a trial. */
    void see(Trial trial) {
        regular &= trial.isRegular(check);
        wavers |= trial.passes()[check] != passesNominally;
    }

    boolean passesNominally() {
        return passesNominally;
    }

    /** Whether the sum of effects says something about the check. */
    boolean regular() {
        return regular;
    }

    /** Whether no tolerance can change the answer, so that no draw is needed. */
    boolean decided() {
        if (wavers) {
            return false;
        }
        return !regular
                || (passesNominally
                        ? nominal + ROOM * (least + leastTogether) >= 0
                        : nominal + ROOM * (largest + largestTogether) < 0);
    }

    /** The margin with the inputs at given positions. */
    private double at(double[] positions) {
        double[][] columns = new double[positions.length][1];
        for (int i = 0; i < positions.length; i++) {
            columns[i][0] = positions[i];
        }
        return margins(columns, 1)[0];
    }

    /**
     * Learns what the inputs with several possibilities do in each way in which they can stand together.
     *
     * @param ways the ways
     * @param beyond for each way the addition beyond what each input does alone
     */
    private void addTogether(Together ways, double[] beyond) {
        for (double addition : beyond) {
            leastTogether = Math.min(leastTogether, addition);
            largestTogether = Math.max(largestTogether, addition);
        }
        if (leastTogether != 0 || largestTogether != 0) {
            this.together = ways;
            this.beyond = beyond;
        }
    }

    /**
     * The margins in several draws.
     *
     * @param columns for each input where each draw puts it
     * @param count how many draws are wanted
     */
    double[] margins(double[][] columns, int count) {
        double[] margins = new double[count];
        for (int i = 0; i < effects.size(); i++) {
            effects.get(i).addTo(margins, columns[inputs.get(i)]);
        }
        Together ways = together;
        for (int draw = 0; draw < count; draw++) {
            margins[draw] += nominal;
            if (ways != null) {
                margins[draw] += beyond[ways.way(columns, draw)];
            }
        }
        return margins;
    }

    /**
     * The inputs whose effect may vary most: those that reach at least a fifth as far as the one that reaches farthest, for a normal reading
     * varies by a tenth of its reach, and nothing by more than half of it.
     */
    int[] wide() {
        double[] reaches = new double[effects.size()];
        double farthest = 0;
        for (int i = 0; i < reaches.length; i++) {
            reaches[i] = reach(effects.get(i));
            farthest = Math.max(farthest, reaches[i]);
        }
        int[] wide = new int[reaches.length];
        int count = 0;
        for (int i = 0; i < reaches.length; i++) {
            if (reaches[i] >= farthest / 5) {
                wide[count++] = i;
            }
        }
        return Arrays.copyOf(wide, count);
    }

    private static double reach(Effect effect) {
        return effect.largest() - effect.least();
    }

    /** The number of an input that has an effect. */
    int input(int index) {
        return inputs.get(index);
    }

    /** What one of the inputs that have an effect adds in each of some draws. */
    double[] additions(int index, double[][] columns, int count) {
        double[] additions = new double[count];
        effects.get(index).addTo(additions, columns[inputs.get(index)]);
        return additions;
    }

    /** The responses of all sampled checks: each input is put at its probes alone. */
    static List<Response> of(Trials trials) {
        List<Response> responses = new ArrayList<>();
        Trial nominal = trials.nominal();
        for (int check = 0; check < trials.checks(); check++) {
            responses.add(new Response(check, nominal));
        }
        List<SampledInput> inputs = trials.inputs().list();
        for (int i = 0; i < inputs.size(); i++) {
            probe(trials, i, inputs.get(i).spread(), responses);
        }
        probeTogether(trials, responses);
        return responses;
    }

    private static void probeTogether(Trials trials, List<Response> responses) {
        Together ways = Together.of(trials.inputs().list());
        List<Long> tried = ways.tried();
        double[][] beyond = new double[responses.size()][ways.whole() && !tried.isEmpty() ? ways.count() : 0];
        for (long way : tried) {
            double[] positions = new double[trials.inputs().list().size()];
            ways.place(way, positions);
            Trial seen = trials.at(positions);
            for (int check = 0; check < responses.size(); check++) {
                Response response = responses.get(check);
                double margin = seen.margins()[check];
                response.see(seen);
                if (beyond[check].length > 0 && !Double.isNaN(margin)) {
                    beyond[check][(int) way] = margin - response.at(positions);
                }
            }
        }
        for (int check = 0; check < responses.size(); check++) {
            if (beyond[check].length > 0) {
                responses.get(check).addTogether(ways, beyond[check]);
            }
        }
    }

    private static void probe(Trials trials, int number, Spread spread, List<Response> responses) {
        List<Trial> seen = new ArrayList<>();
        if (spread.possibilities() == 0) {
            seen.add(trials.with(number, -spread.probe()));
            seen.add(trials.with(number, spread.probe()));
        } else {
            for (int position = 1; position < spread.possibilities(); position++) {
                seen.add(trials.with(number, position));
            }
        }
        for (int check = 0; check < responses.size(); check++) {
            Response response = responses.get(check);
            double[] additions = new double[seen.size()];
            for (int i = 0; i < additions.length; i++) {
                double margin = seen.get(i).margins()[check];
                response.see(seen.get(i));
                additions[i] = Double.isNaN(margin) ? 0 : margin - response.nominal;
            }
            response.add(number, effect(spread, additions));
        }
    }

    private static Effect effect(Spread spread, double[] additions) {
        if (spread.possibilities() == 0) {
            return Effect.ofReading(spread, additions[0], additions[1]);
        }
        double[] all = new double[additions.length + 1];
        System.arraycopy(additions, 0, all, 1, additions.length);
        return Effect.ofPossibilities(all);
    }
}
