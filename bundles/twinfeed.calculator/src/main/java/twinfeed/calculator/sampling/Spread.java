// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

/**
 * What positions an input can take, and how likely.
 *
 * @param reach the farthest position on either side that counts; for one of several possibilities the last number
 * @param probe the position on either side at which its effect is measured
 * @param possibilities how many possibilities there are; 0 for a reading
 */
record Spread(double reach, double probe, int possibilities) {
    /** From -1 to 1, all alike. */
    static final Spread RECTANGULAR = new Spread(1, 1, 0);

    /** Standard normal; one in two thousand lies farther out than 3.5. */
    static final Spread NORMAL = new Spread(3.5, 2, 0);

    /** Part of an instrument's half-width that is its bias, common to its readings; the rest is noise of each. Judgement. */
    private static final double BIAS = 0.7;

    /** One of several possibilities, each as likely as another. */
    static Spread among(int possibilities) {
        return new Spread(possibilities - 1.0, 0, possibilities);
    }

    /**
     * Where a draw puts an input that shares no instrument with others.
     *
     * @param own its coordinate, 0 to 1
     */
    double position(double own) {
        if (possibilities > 0) {
            return Math.min((int) (own * possibilities), possibilities - 1);
        }
        return equals(NORMAL) ? NormalQuantile.of(own) : 2 * own - 1;
    }

    /**
     * Where a draw puts one of the readings of an instrument; only those from -1 to 1 share its bias.
     *
     * @param own the reading's own coordinate, 0 to 1
     * @param shared the coordinate of the instrument's bias, 0 to 1
     */
    double position(double own, double shared) {
        return equals(RECTANGULAR) ? BIAS * (2 * shared - 1) + (1 - BIAS) * (2 * own - 1) : position(own);
    }
}
