// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import twinfeed.calculator.Findings;

/** Answers the checks about one subject. */
@FunctionalInterface
interface CheckGroup {
    /** Adds one finding for each check of the subject. */
    void check(ShowerCase shower, Findings findings);
}
