// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/**
 * How sure a finding is, given the tolerances of the readings.
 *
 * @param passes chance that the check passes, 0 to 1
 * @param low 5 % quantile of the margin, in SI; 0 where the check has no figures
 * @param high 95 % quantile of the margin
 * @param remeasure path of the reading that contributes most to the variance of the margin; empty where none does
 */
public record PassProbability(double passes, double low, double high, String remeasure) {
    /** Below this chance a check counts as failing, above one less it as passing; in between it is too close to call. */
    public static final double DOUBT = 0.05;

    /** Whether the outcome is too close to call. */
    public boolean tooClose() {
        return passes > DOUBT && passes < 1 - DOUBT;
    }
}
