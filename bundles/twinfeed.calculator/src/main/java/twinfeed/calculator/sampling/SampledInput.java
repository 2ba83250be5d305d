// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

/** Something of a private copy of a survey that is drawn anew for each sample. */
interface SampledInput {
    /** Its path, for the advice what to measure again. */
    String path();

    /** Index of the instrument whose bias it shares with other readings, -1 for none. */
    int gauge();

    /**
     * Draws it.
     *
     * @param own its own coordinate, 0 to 1
     * @param shared the coordinate of its instrument's bias, 0 to 1; 0.5 where it shares none
     */
    void draw(double own, double shared);
}
