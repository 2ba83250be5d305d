// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/** A calculator's view of one survey, ready to judge heaters. Used by one thread at a time. */
@FunctionalInterface
public interface Assessor {
    /**
     * Judges one candidate heater.
     *
     * @param candidate the heater, and whether it is the one that is there
     * @param shared the quantities that other calculators provided for this candidate; this one puts its own there
     * @param findings where the findings go
     */
    void assess(Candidate candidate, SharedQuantities shared, Findings findings);
}
