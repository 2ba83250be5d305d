// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import twinfeed.calculator.Candidate;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;

/** Answers some of the checks for one heater. */
@FunctionalInterface
interface FlowAnswer {
    /** Adds the findings. */
    void answer(Candidate candidate, SharedQuantities shared, Findings findings);
}
