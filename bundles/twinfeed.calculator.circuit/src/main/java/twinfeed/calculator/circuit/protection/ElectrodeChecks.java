// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.protection;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;
import twinfeed.units.DisplayUnit;

/** Fault protection with an own electrode: touch voltage by the RCD, never by the breaker's table. */
public final class ElectrodeChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public ElectrodeChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.ELECTRODE, CircuitChecks.ELECTRODE_STABILITY);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        if (!survey.feed().ownElectrode()) {
            applies(findings, CircuitChecks.ELECTRODE);
            applies(findings, CircuitChecks.ELECTRODE_STABILITY);
            return;
        }
        touchVoltage(shower, findings);
        stability(findings);
    }

    private void applies(Findings findings, Check check) {
        if (!findings.blocked(check)) {
            findings.on(check).add();
        }
    }

    private void touchVoltage(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.ELECTRODE;
        Double electrodeOhm = survey.feed().electrodeOhm();
        Double residualA = survey.residual().residualA();
        if (survey.residual().none()) {
            FindingBuilder finding = findings.on(check)
                    .outcome(Outcome.FAILS)
                    .variant("noResidual")
                    .source(survey.cite("electrode"));
            finding.remedies(() -> remedies.residual(shower));
            finding.add();
        } else if (electrodeOhm == null || residualA == null) {
            findings.on(check)
                    .cannotTell(missing(electrodeOhm == null, residualA == null))
                    .add();
        } else {
            touchVoltage(shower, findings, electrodeOhm, residualA);
        }
    }

    private void touchVoltage(ShowerCase shower, Findings findings, double electrodeOhm, double residualA) {
        double limitV = survey.rules().number("touch.voltage");
        FindingBuilder finding = findings.on(CircuitChecks.ELECTRODE)
                .compare(electrodeOhm * residualA, limitV)
                .argument("electrode", electrodeOhm)
                .argument("limitOhm", limitV / Math.max(residualA, 1e-6))
                .argument("residual", DisplayUnit.MILLIAMPERE.amount(residualA))
                .source(survey.cite("electrode"))
                .working(() -> touchVoltage(electrodeOhm, residualA));
        finding.remedies(() -> remedies.residual(shower));
        finding.remedies(() -> remedies.electrode());
        finding.add();
    }

    private Working touchVoltage(double electrodeOhm, double residualA) {
        return Working.start()
                .input("RA", "electrode", electrodeOhm, "Ω", "", ReadingPaths.ELECTRODE)
                .input("IdN", "ratedResidual", residualA, "A", "", ReadingPaths.RCD_RESIDUAL)
                .step("Ut", "touchVoltage", "RA * IdN", "V", survey.cite("electrode"))
                .build();
    }

    private static List<String> missing(boolean electrode, boolean residual) {
        List<String> missing = new ArrayList<>();
        if (electrode) {
            missing.add(ReadingPaths.ELECTRODE);
        }
        if (residual) {
            missing.add(ReadingPaths.RCD_RESIDUAL);
        }
        return missing;
    }

    private void stability(Findings findings) {
        Double electrodeOhm = survey.feed().electrodeOhm();
        if (electrodeOhm == null) {
            findings.on(CircuitChecks.ELECTRODE_STABILITY)
                    .cannotTell(List.of(ReadingPaths.ELECTRODE))
                    .add();
            return;
        }
        FindingBuilder finding = findings.on(CircuitChecks.ELECTRODE_STABILITY)
                .compare(electrodeOhm, survey.rules().number("electrode.stable"))
                .source(survey.rules().source("electrode.stable"))
                .working(() -> Working.start()
                        .input("RA", "electrode", electrodeOhm, "Ω", "", ReadingPaths.ELECTRODE)
                        .build());
        finding.add();
    }
}
