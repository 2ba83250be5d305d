// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Map;

/**
 * The draws of a check of which its response is not sure, because they come out near the limit: how many of them pass.
 *
 * <p>Some are judged in truth. What the truth adds to the response there is taken for what it may add to the draws of much the same margin, for
 * the response is off by much the same where the margin is much the same. So it takes few judgements to see where the limit lies, and
 * they are made where it is still in doubt.
 */
final class DrawsNearLimit implements OpenDraws {
    /** So many of the truths next by margin tell what the truth may add to a draw. */
    private static final int WINDOW = 6;

    /** So many draws are asked before it is worked out again what is known. */
    private static final int BATCH = 8;

    /** Draws of which all truths around say the same are asked too, but seldom. */
    private static final double LEAST_DOUBT = 0.02;

    /** The square of the correlation from which an addition is taken to follow the margin. */
    private static final double TREND = 0.7;

    /** Contradictions of so many standard deviations are no chance. */
    private static final double CHANCE = 2;

    private static final double GOLDEN_SECTION = 0.618_033_988_7;

    private final int[] draws;
    private final double[] margins;
    private final int[] ranks;
    private final double[] additions;
    private final double[] chances;
    private final Deque<Integer> batch = new ArrayDeque<>();
    private int known;
    private int plans;
    private double passes;
    private double deviation;

    /**
     * Draws near the limit.
     *
     * @param near their numbers
     * @param predicted what the response says of each draw, by number
     * @param truths the true margins of the draws, near or not, that were judged before, by number
     */
    DrawsNearLimit(int[] near, double[] predicted, Map<Integer, Double> truths) {
        this.draws = inOrder(near, predicted);
        this.margins = Arrays.stream(draws).mapToDouble(draw -> predicted[draw]).toArray();
        this.ranks = new int[predicted.length];
        Arrays.fill(ranks, -1);
        for (int rank = 0; rank < draws.length; rank++) {
            ranks[draws[rank]] = rank;
        }
        this.additions = new double[draws.length];
        Arrays.fill(additions, Double.NaN);
        this.chances = new double[draws.length];
        truths.forEach(this::keep);
        reckon();
    }

    /** The draws in the order of their margins; those of margins that are equal to some twelve digits stay in their order. */
    private static int[] inOrder(int[] near, double[] predicted) {
        // One number for each, the margin with the draw in its last digits: those sort without a comparator.
        long last = (Long.highestOneBit(predicted.length) << 1) - 1;
        long[] keys = new long[near.length];
        Arrays.setAll(keys, i -> ascending(predicted[near[i]]) & ~last | near[i]);
        Arrays.sort(keys);
        return Arrays.stream(keys).mapToInt(key -> (int) (key & last)).toArray();
    }

    /** A whole number that is larger where a number is larger. */
    private static long ascending(double number) {
        long bits = Double.doubleToLongBits(number);
        return bits ^ (bits >> Long.SIZE - 1 & Long.MAX_VALUE);
    }

    /** Whether a truth is news. */
    private boolean keep(int draw, double margin) {
        int rank = ranks[draw];
        if (rank < 0 || isKnown(rank)) {
            return false;
        }
        additions[rank] = margin - margins[rank];
        known++;
        batch.remove(rank);
        return true;
    }

    @Override
    public double passes() {
        return passes;
    }

    @Override
    public double deviation() {
        return deviation;
    }

    @Override
    public int next() {
        while (!batch.isEmpty() && isKnown(batch.element())) {
            batch.remove();
        }
        if (batch.isEmpty()) {
            plan();
        }
        return draws[batch.element()];
    }

    private boolean isKnown(int rank) {
        return !Double.isNaN(additions[rank]);
    }

    @Override
    public void learn(int draw, double margin, boolean passing) {
        if (keep(draw, margin) && batch.isEmpty()) {
            reckon();
        }
    }

    /** Picks the draws to be asked next: spread evenly over the margins, and most where truths around say different things. */
    private void plan() {
        double[] upTo = new double[draws.length];
        double sum = 0;
        for (int rank = 0; rank < draws.length; rank++) {
            sum += isKnown(rank) ? 0 : Math.sqrt(chances[rank] * (1 - chances[rank])) + LEAST_DOUBT;
            upTo[rank] = sum;
        }
        double offset = (0.5 + plans * GOLDEN_SECTION) % 1;
        plans++;
        int rank = 0;
        for (int i = 0; i < BATCH; i++) {
            // What is known adds no doubt, so that the sum passes no mark there.
            while (upTo[rank] <= sum * (i + offset) / BATCH) {
                rank++;
            }
            if (!batch.contains(rank)) {
                batch.add(rank);
            }
        }
    }

    /** Works out anew what is known. */
    private void reckon() {
        if (known < Math.min(WINDOW, draws.length)) {
            // Nothing is known of any more than of the others.
            passes = Arrays.stream(margins).filter(margin -> margin >= 0).count();
            deviation = draws.length;
            return;
        }
        for (int rank = 0; rank < draws.length; rank++) {
            chances[rank] = isKnown(rank) && passes(rank) ? 1 : 0;
        }
        deviation = known < draws.length ? carryOver(truths()) : 0;
        passes = Arrays.stream(chances).sum();
    }

    /** Carries what the truths add over to the draws between them; the answer is the standard deviation of their number that passes. */
    private double carryOver(int[] truths) {
        double[] influences = new double[known];
        int from = 0;
        double trend = trend(truths, from);
        for (int rank = 0; rank < draws.length; rank++) {
            if (isKnown(rank)) {
                continue;
            }
            int before = from;
            while (from + WINDOW < known && isNearer(truths[from + WINDOW], truths[from], rank)) {
                from++;
            }
            trend = from == before ? trend : trend(truths, from);
            chances[rank] = share(rank, truths, from, trend);
            for (int i = from; i < from + WINDOW; i++) {
                influences[i] += ((passesWith(rank, truths[i], trend) ? 1 : 0) - chances[rank]) / WINDOW;
            }
        }
        double squares = Arrays.stream(influences).map(each -> each * each).sum();
        return Math.max(Math.sqrt(squares * WINDOW / (WINDOW - 1)), contradiction(truths));
    }

    private boolean passes(int rank) {
        return margins[rank] + additions[rank] >= 0;
    }

    /**
     * By how many draws the truths contradict what those around each of them say, if by more than chance explains: then the additions follow
     * the margin in a way that is not seen yet.
     */
    private double contradiction(int[] truths) {
        double sum = 0;
        double variance = 0;
        for (int i = 0; i < truths.length && truths.length > WINDOW; i++) {
            int from = Math.min(Math.max(0, i - WINDOW / 2), truths.length - WINDOW - 1);
            int[] others = new int[WINDOW];
            for (int j = 0; j < WINDOW; j++) {
                others[j] = truths[from + j < i ? from + j : from + j + 1];
            }
            double said = share(truths[i], others, 0, trend(others, 0));
            double weight = (rank(truths, i + 1) - rank(truths, i - 1)) / 2.0;
            sum += weight * ((passes(truths[i]) ? 1 : 0) - said);
            variance += weight * weight * said * (1 - said);
        }
        return Math.abs(sum) > CHANCE * Math.sqrt(variance) ? Math.abs(sum) : 0;
    }

    /** The rank of a truth by its place among the truths; beyond them, the ends. */
    private int rank(int[] truths, int place) {
        return place < 0 ? 0 : place >= truths.length ? draws.length : truths[place];
    }

    private boolean isNearer(int above, int below, int rank) {
        return margins[above] - margins[rank] < margins[rank] - margins[below];
    }

    /** The share of the truths around with whose addition a draw passes. */
    private double share(int rank, int[] truths, int from, double trend) {
        int passing = 0;
        for (int i = from; i < from + WINDOW; i++) {
            passing += passesWith(rank, truths[i], trend) ? 1 : 0;
        }
        return (double) passing / WINDOW;
    }

    private boolean passesWith(int rank, int truth, double trend) {
        return margins[rank] + additions[truth] + trend * (margins[rank] - margins[truth]) >= 0;
    }

    /**
     * How the addition changes with the margin among the truths around, if it plainly does: where the margin has a corner, it does by as much as
     * the margin itself.
     */
    private double trend(int[] truths, int from) {
        double meanMargin = 0;
        double meanAddition = 0;
        for (int i = from; i < from + WINDOW; i++) {
            meanMargin += margins[truths[i]] / WINDOW;
            meanAddition += additions[truths[i]] / WINDOW;
        }
        double squares = 0;
        double products = 0;
        double spread = 0;
        for (int i = from; i < from + WINDOW; i++) {
            double off = margins[truths[i]] - meanMargin;
            squares += off * off;
            products += off * (additions[truths[i]] - meanAddition);
            spread += (additions[truths[i]] - meanAddition) * (additions[truths[i]] - meanAddition);
        }
        return products * products > TREND * squares * spread ? products / squares : 0;
    }

    private int[] truths() {
        int[] found = new int[known];
        int count = 0;
        for (int rank = 0; rank < draws.length; rank++) {
            if (isKnown(rank)) {
                found[count++] = rank;
            }
        }
        return found;
    }
}
