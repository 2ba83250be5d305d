// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

/** Draws of one check of which only a judgement of the house says for sure whether they pass, and how many do as far as is known. */
interface OpenDraws {
    /** The number of the draw that should be judged next. */
    int next();

    /**
     * Learns the truth of a draw; of any other than these, nothing.
     *
     * @param draw its number
     * @param margin the margin of the check; not a number where it has none
     * @param passes whether it passes
     */
    void learn(int draw, double margin, boolean passes);

    /** How many of them pass, as far as is known. */
    double passes();

    /** The standard deviation of that number. */
    double deviation();
}
