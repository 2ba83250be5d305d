// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

/**
 * What the sampled checks said with the inputs at some positions.
 *
 * @param passes whether each check passes
 * @param margins the margin of each check; not a number where it gave no figures
 */
record Trial(boolean[] passes, double[] margins) {
    /** Whether a check has a margin and passes where that is 0 or more. */
    boolean isRegular(int check) {
        return margins[check] >= 0 == passes[check] && !Double.isNaN(margins[check]);
    }
}
