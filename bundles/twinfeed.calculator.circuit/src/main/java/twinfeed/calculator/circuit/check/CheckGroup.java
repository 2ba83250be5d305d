// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.check;

import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.survey.ShowerCase;

/** Answers the checks about one subject. */
@FunctionalInterface
public interface CheckGroup {
    /** Adds one finding for each check of the subject. */
    void check(ShowerCase shower, Findings findings);
}
