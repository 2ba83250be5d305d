// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.model.assessment.Outcome;

/** Cable with rubber or lead, of aluminium or of imperial sizes: it is renewed, whatever it measures. */
public final class OldCableCheck implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public OldCableCheck(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.OLD_CABLE);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        if (!survey.run().old()) {
            findings.on(CircuitChecks.OLD_CABLE).add();
            return;
        }
        findings.on(CircuitChecks.OLD_CABLE)
                .outcome(Outcome.FAILS)
                .argument("segments", survey.run().oldNames())
                .source(survey.cite("capacity"))
                .remedies(() -> remedies.renewedCables(shower))
                .add();
    }
}
