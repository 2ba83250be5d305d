// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;

/** Answers the checks about one subject. */
interface CheckGroup {
    /** The checks. */
    List<Check> checks();

    /** Adds one finding for each check of the subject. */
    void check(ShowerCase shower, Findings findings);
}
