// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

/**
 * What positions an input can take.
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

    /** One of several possibilities, each as likely as another. */
    static Spread among(int possibilities) {
        return new Spread(possibilities - 1.0, 0, possibilities);
    }
}
