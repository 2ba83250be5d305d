// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import twinfeed.calculator.CalculatorDescriptor;

/** Something of a private copy of a survey that is put at other values, alone or drawn with all others. */
interface SampledInput {
    /** Its path, for the advice what to measure again. */
    String path();

    /** Index of the instrument whose bias it shares with other readings, -1 for none. */
    int gauge();

    /**
     * Puts it at a position: for a reading its deviation in half-widths (or in standard uncertainties), for one of several
     * possibilities its number. 0 is what the survey says.
     */
    void place(double position);

    /** Whether what a calculator says can follow from it, other than through what it takes from others. */
    boolean isReadBy(CalculatorDescriptor calculator);

    /** The kind of its positions. */
    Spread spread();
}
