// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.check;

import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.survey.CircuitSurvey;

/** An old cable is one finding: what would be asked of a cable that goes anyway does not arise. */
public final class OldCable {
    private OldCable() {}

    /** Whether the cable is old; if so, the check is answered as not applicable. */
    public static boolean skips(CircuitSurvey survey, Findings findings, Check check) {
        if (!survey.run().old()) {
            return false;
        }
        findings.on(check).variant("rewire").add();
        return true;
    }
}
