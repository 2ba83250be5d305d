// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Series;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.MissingData;
import twinfeed.calculator.circuit.survey.CableRunWorking;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.OriginVoltage;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.engineering.cable.ConductorTemperature;
import twinfeed.engineering.water.Heat;
import twinfeed.units.Kind;

/** Voltage at the heater's terminals and the power that it really takes, for every voltage at the origin. */
public final class TerminalVoltageChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final double deviation;

    /**
     * The checks.
     *
     * @param deviation where the heater's real power lies within its tolerance: 0 at the rating, 1 and -1 at its ends
     */
    public TerminalVoltageChecks(CircuitSurvey survey, double deviation) {
        this.survey = survey;
        this.deviation = deviation;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.TERMINAL_VOLTAGE, CircuitChecks.DELIVERED_POWER);
    }

    @Override
    public List<SharedQuantity> provides() {
        return List.of(SharedQuantity.TERMINAL_VOLTAGE, SharedQuantity.DELIVERED_POWER);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        ShowerLoad load = shower.load();
        List<CableSegment> run = measurable();
        if (load == null || run == null) {
            unknown(shower, findings);
            return;
        }
        double[] terminalV = new double[survey.grid().voltageCount()];
        double[] powerW = new double[terminalV.length];
        double share = PowerTolerance.of(shower.heater()).share(deviation);
        double elementOhm = load.elementOhm() / share;
        for (int at = 0; at < terminalV.length; at++) {
            terminalV[at] =
                    Cable.terminalVoltageV(survey.grid().voltage(at), elementOhm, run, ConductorTemperature.BY_CURRENT);
            powerW[at] = Heat.powerOfResistance(elementOhm, terminalV[at]);
        }
        shower.shared().put(SharedQuantity.TERMINAL_VOLTAGE, terminalV);
        shower.shared().put(SharedQuantity.DELIVERED_POWER, powerW);
        Real real = new Real(load, share);
        shower.shared().explain(SharedQuantity.DELIVERED_POWER, at -> working(real, terminalV[at], at)
                .step("P", "power", "U^2 / R", "W", "")
                .build());
        report(findings, real, terminalV, powerW);
    }

    /** A load with the share of its rated power that it really takes. */
    private record Real(ShowerLoad load, double share) {
        double elementOhm() {
            return load.elementOhm() / share;
        }
    }

    /** The run, if every length is known too. */
    private @Nullable List<CableSegment> measurable() {
        return survey.run().lengthM() == null ? null : survey.run().placed();
    }

    private void report(Findings findings, Real real, double[] terminalV, double[] powerW) {
        Grid grid = survey.grid();
        int own = grid.nominal();
        Condition condition = Condition.of(null, grid.voltage(own), null);
        findings.on(CircuitChecks.TERMINAL_VOLTAGE)
                .report(terminalV[own])
                .condition(condition)
                .argument("lowest", terminalV[0])
                .argument("lowestSupply", grid.voltage(0))
                .source(survey.cite("drop"))
                .working(() -> working(real, terminalV[own], own).build())
                .add();
        findings.on(CircuitChecks.DELIVERED_POWER)
                .report(powerW[own])
                .condition(condition)
                .argument("rated", Kind.POWER.amount(real.load().ratedW()))
                .argument("ratedVoltage", real.load().ratedV())
                .argument("lowest", Kind.POWER.amount(powerW[0]))
                .argument("lowestSupply", grid.voltage(0))
                .source(survey.cite("drop"))
                .series(() -> series(powerW))
                .working(() -> powerWorking(real, terminalV[own], own))
                .add();
    }

    private Series series(double[] powerW) {
        return new Series(
                "deliveredPower",
                Series.Axis.of("supplyVoltage", Kind.VOLTAGE),
                Series.Axis.of("power", Kind.POWER),
                List.of(),
                survey.grid().voltages(),
                powerW);
    }

    private Working powerWorking(Real real, double terminalV, int voltage) {
        return working(real, terminalV, voltage)
                .step("P", "power", "U^2 / R", "W", "")
                .step("P_kW", "deliveredPower", "P / 1000", "kW", "")
                .build();
    }

    private Working.Builder working(Real real, double terminalV, int voltage) {
        double currentA = terminalV / real.elementOhm();
        Working.Builder working = real.load().rating();
        // At its rating, which is nearly always, the formula is the one that everybody knows.
        if (real.share() == 1) {
            working.step("R", "elementResistance", "Ur^2 / Pr", "Ω", "");
        } else {
            working.input("f", "powerShare", real.share(), "", "")
                    .step("R", "elementResistance", "Ur^2 / (Pr * f)", "Ω", "");
        }
        OriginVoltage.add(working, survey.grid(), voltage);
        CableRunWorking.resistance(working, survey, currentA);
        return working.step("U", "terminalVoltage", "U0 * R / (R + r)", "V", "");
    }

    private void unknown(ShowerCase shower, Findings findings) {
        List<String> lacking = new ArrayList<>(shower.missingRating());
        lacking.addAll(lackingOfRun());
        shower.shared().markMissing(SharedQuantity.TERMINAL_VOLTAGE, lacking);
        shower.shared().markMissing(SharedQuantity.DELIVERED_POWER, lacking);
        unknown(shower, findings, CircuitChecks.TERMINAL_VOLTAGE);
        unknown(shower, findings, CircuitChecks.DELIVERED_POWER);
    }

    private List<String> lackingOfRun() {
        List<String> lacking = survey.run().missing();
        return lacking.isEmpty() && survey.run().placed() == null
                ? List.of(survey.run().placingGap().path())
                : lacking;
    }

    private void unknown(ShowerCase shower, Findings findings, Check check) {
        if (findings.blocked(check)) {
            return;
        }
        List<String> lacking = new ArrayList<>(shower.missingRating());
        lacking.addAll(survey.run().missing());
        if (lacking.isEmpty()) {
            MissingData.add(findings, check, survey.run().placingGap());
        } else {
            findings.on(check).cannotTell(lacking).add();
        }
    }
}
