// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.protection;

import java.util.List;
import java.util.Locale;
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

/** The residual-current device: there, sensitive enough, of the right type, fast, and not for the whole house. */
public final class ResidualDeviceChecks implements CheckGroup {
    /** Types that see more than plain alternating current. */
    private static final List<String> FOR_ELECTRONICS = List.of("A", "F", "B", "B+");

    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public ResidualDeviceChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.RCD, CircuitChecks.RCD_TYPE, CircuitChecks.RCD_TRIP);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        presence(shower, findings);
        type(shower, findings);
        tripTime(shower, findings);
    }

    private boolean absent(Findings findings, Check check) {
        if (survey.residual().kind() == null) {
            findings.on(check).cannotTell(List.of(ReadingPaths.RCD_KIND)).add();
            return true;
        }
        if (survey.residual().none()) {
            findings.on(check).variant("none").add();
            return true;
        }
        return false;
    }

    private void presence(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.RCD;
        Double residualA = survey.residual().residualA();
        if (survey.residual().none()) {
            FindingBuilder finding = findings.on(check)
                    .outcome(Outcome.FAILS)
                    .variant("none")
                    .argument("most", DisplayUnit.MILLIAMPERE.amount(survey.residualLimitA()))
                    .source(survey.cite("rcd"));
            finding.remedies(() -> remedies.residual(shower));
            finding.add();
        } else if (survey.residual().kind() == null) {
            findings.on(check)
                    .cannotTell(List.of(ReadingPaths.RCD_KIND, ReadingPaths.RCD_RESIDUAL))
                    .add();
        } else if (survey.residual().delayed()) {
            findings.on(check)
                    .outcome(Outcome.FAILS)
                    .variant("delayed")
                    .argument("most", DisplayUnit.MILLIAMPERE.amount(survey.residualLimitA()))
                    .source(survey.cite("rcd"))
                    .remedies(() -> remedies.residual(shower))
                    .add();
        } else if (residualA == null) {
            findings.on(check).cannotTell(List.of(ReadingPaths.RCD_RESIDUAL)).add();
        } else {
            sensitivity(shower, findings, residualA);
        }
    }

    private void sensitivity(ShowerCase shower, Findings findings, double residualA) {
        FindingBuilder finding = findings.on(CircuitChecks.RCD)
                .compare(residualA, survey.residualLimitA())
                .source(survey.cite("rcd"))
                .working(() -> Working.start()
                        .input(
                                "IdN",
                                "ratedResidual",
                                DisplayUnit.MILLIAMPERE.amount(residualA),
                                "",
                                ReadingPaths.RCD_RESIDUAL)
                        .build());
        finding.remedies(() -> remedies.residual(shower));
        finding.add();
    }

    private void type(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.RCD_TYPE;
        if (absent(findings, check)) {
            return;
        }
        String type = survey.residual().type().toUpperCase(Locale.ROOT);
        if (type.isEmpty()) {
            findings.on(check).cannotTell(List.of(ReadingPaths.RCD_TYPE)).add();
            return;
        }
        Boolean electronics = shower.heater().getElectronics();
        FindingBuilder finding = findings.on(check).argument("type", type).source(survey.cite("rcd.type"));
        if (FOR_ELECTRONICS.contains(type)) {
            finding.outcome(Outcome.PASSES).add();
        } else if (electronics == null) {
            finding.cannotTell(List.of(ReadingPaths.ELECTRONICS)).add();
        } else if (electronics) {
            finding.remedies(() -> remedies.residual(shower));
            finding.outcome(Outcome.FAILS).add();
        } else {
            finding.outcome(Outcome.PASSES).variant("noElectronics").add();
        }
    }

    /** Measured when the work is done; until then the question does not arise. */
    private void tripTime(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.RCD_TRIP;
        if (absent(findings, check)) {
            return;
        }
        Double tripS = survey.residual().tripS();
        String limit = survey.residual().delayed() ? "rcd.trip.delayed" : "rcd.trip";
        double limitS = survey.rules().number(limit);
        if (tripS == null) {
            findings.on(check)
                    .variant("notMeasured")
                    .argument("most", DisplayUnit.MILLISECOND.amount(limitS))
                    .add();
            return;
        }
        FindingBuilder finding = findings.on(check)
                .compare(tripS, limitS)
                .source(survey.rules().source(limit))
                .working(() -> Working.start()
                        .input(
                                "t",
                                "tripTime",
                                DisplayUnit.MILLISECOND.amount(tripS),
                                "",
                                "survey.electricity.circuit.rcd.tripTime")
                        .build());
        finding.remedies(() -> remedies.residual(shower));
        finding.add();
    }
}
