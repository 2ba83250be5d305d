// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import twinfeed.calculator.Findings;

/** Answers the checks about one subject. */
@FunctionalInterface
interface Judge {
    /** Adds one finding for each check of the subject. */
    void judge(ShowerCase shower, Findings findings);
}
