// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

/** Something of a private copy of a survey that is put at other values, alone or drawn with all others. */
interface SampledInput {
    /** Its path, for the advice what to measure again. */
    String path();

    /** Index of the instrument whose bias it shares with other readings, -1 for none. */
    int gauge();

    /**
     * Where a draw puts it: for a reading its deviation in half-widths (or in standard uncertainties), for one of several
     * possibilities its number. 0 is what the survey says.
     *
     * @param own its own coordinate, 0 to 1
     * @param shared the coordinate of its instrument's bias, 0 to 1; 0.5 where it shares none
     */
    double position(double own, double shared);

    /** Puts it at a position. */
    void place(double position);

    /** The kind of its positions. */
    Spread spread();
}
