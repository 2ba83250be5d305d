// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.List;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;

/** Answers some of the checks for one heater. */
interface FlowAnswer {
    /** The checks. */
    List<Check> checks();

    /** Adds the findings. */
    void answer(Candidate candidate, SharedQuantities shared, Findings findings);
}
