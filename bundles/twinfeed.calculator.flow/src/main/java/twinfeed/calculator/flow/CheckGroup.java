// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.List;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;

/** Answers the checks about one subject. */
interface CheckGroup {
    /** The checks. */
    List<Check> checks();

    /** Adds one finding for each check of the subject. */
    void check(Candidate candidate, SharedQuantities shared, Findings findings);
}
