// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.installation;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;
import twinfeed.units.DisplayUnit;

/** What was seen and read beside the circuit itself: insulation, supply voltage, consumer unit. */
public final class ConditionChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public ConditionChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(
                CircuitChecks.INSULATION,
                CircuitChecks.SUPPLY_HIGH,
                CircuitChecks.SUPPLY_LOW,
                CircuitChecks.SPARE_WAY,
                CircuitChecks.APPROVED);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        insulation(shower, findings);
        supply(findings);
        spareWay(findings);
        approved(shower, findings);
    }

    /** Measured before the circuit is energised again; until then the question does not arise. */
    private void insulation(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.INSULATION;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        Double ohm = survey.readings().insulationOhm();
        double leastOhm = survey.rules().number("insulation.resistance");
        if (ohm == null) {
            findings.on(check)
                    .variant("notMeasured")
                    .argument("least", DisplayUnit.MEGOHM.amount(leastOhm))
                    .add();
            return;
        }
        FindingBuilder finding = findings.on(check)
                .compare(ohm, leastOhm)
                .source(survey.cite("insulation"))
                .working(() -> Working.start()
                        .input(
                                "Riso",
                                "insulationResistance",
                                DisplayUnit.MEGOHM.amount(ohm),
                                "",
                                "survey.electricity.circuit.insulationResistance")
                        .build());
        boolean apart = survey.readings().unitDisconnected();
        finding.variant(apart ? "apart" : "");
        if (!apart) {
            finding.remedies(remedies::testApart);
        }
        finding.remedies(() -> remedies.renewedCables(shower));
        finding.add();
    }

    private void supply(Findings findings) {
        Double supplyV = survey.feed().supplyV();
        if (supplyV == null) {
            findings.on(CircuitChecks.SUPPLY_HIGH).variant("notMeasured").add();
            findings.on(CircuitChecks.SUPPLY_LOW).variant("notMeasured").add();
            return;
        }
        supply(findings, CircuitChecks.SUPPLY_HIGH, supplyV, "voltage.most");
        supply(findings, CircuitChecks.SUPPLY_LOW, supplyV, "voltage.least");
    }

    private void supply(Findings findings, Check check, double supplyV, String limit) {
        findings.on(check)
                .compare(supplyV, survey.rules().number(limit))
                .source(survey.rules().source(limit))
                .working(() -> Working.start()
                        .input("U0", "originVoltage", supplyV, "V", "", Origin.SUPPLY_VOLTAGE)
                        .build())
                .add();
    }

    /** Only a circuit that is not there yet needs a way. */
    private void spareWay(Findings findings) {
        Check check = CircuitChecks.SPARE_WAY;
        if (survey.device().known()) {
            findings.on(check).add();
            return;
        }
        Boolean spare = survey.feed().spareWay();
        if (spare == null) {
            findings.on(check).cannotTell(List.of(ReadingPaths.SPARE_WAY)).add();
            return;
        }
        FindingBuilder finding = findings.on(check).outcome(spare ? Outcome.PASSES : Outcome.FAILS);
        if (!spare) {
            finding.remedies(() -> remedies.extraWay());
        }
        finding.source(survey.cite("assembly")).add();
    }

    private void approved(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.APPROVED;
        Boolean approved = survey.feed().approved();
        if (approved == null) {
            findings.on(check).cannotTell(List.of(ReadingPaths.APPROVED)).add();
            return;
        }
        FindingBuilder finding = findings.on(check)
                .outcome(approved ? Outcome.PASSES : Outcome.FAILS)
                .source(survey.cite("assembly"));
        if (!approved) {
            finding.remedies(() -> remedies.approvedDevices(shower));
        }
        finding.add();
    }
}
