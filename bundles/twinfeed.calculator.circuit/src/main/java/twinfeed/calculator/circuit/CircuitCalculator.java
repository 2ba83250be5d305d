// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Context;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.circuit.cable.CapacityChecks;
import twinfeed.calculator.circuit.cable.HighestPowerCheck;
import twinfeed.calculator.circuit.cable.LoadChecks;
import twinfeed.calculator.circuit.cable.MaximumLengthCheck;
import twinfeed.calculator.circuit.cable.OldCableCheck;
import twinfeed.calculator.circuit.cable.TerminalVoltageChecks;
import twinfeed.calculator.circuit.cable.VoltageDropCheck;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.formula.CircuitFormulas;
import twinfeed.calculator.circuit.installation.ConditionChecks;
import twinfeed.calculator.circuit.installation.HeaterRecordChecks;
import twinfeed.calculator.circuit.installation.InstructionChecks;
import twinfeed.calculator.circuit.installation.IsolatorChecks;
import twinfeed.calculator.circuit.installation.OriginChecks;
import twinfeed.calculator.circuit.installation.RoomChecks;
import twinfeed.calculator.circuit.protection.EarthPathChecks;
import twinfeed.calculator.circuit.protection.ElectrodeChecks;
import twinfeed.calculator.circuit.protection.FaultLevelCheck;
import twinfeed.calculator.circuit.protection.LoopImpedanceCheck;
import twinfeed.calculator.circuit.protection.ProtectiveConductorCheck;
import twinfeed.calculator.circuit.protection.ResidualDeviceChecks;
import twinfeed.calculator.circuit.protection.ResidualLoadChecks;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.remedy.CircuitRemedyKinds;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.LoopData;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.rules.RuleTitles;
import twinfeed.model.assessment.Supply;
import twinfeed.units.Kind;
import twinfeed.units.text.Texts;

/**
 * Judges the circuit that feeds a heater, and gives the voltage and power that arrive there.
 *
 * <p>The currents compared are those at the heater's own rated voltage; the check of voltage drop takes full conductor
 * temperature, the delivered power the temperature that belongs to the current. Tables and limits are the rule set's.
 */
@Component(service = Calculator.class)
public final class CircuitCalculator implements Calculator {
    private static final Texts TEXTS = new Texts(CircuitCalculator.class, "Circuit").including(RuleTitles.TEXTS);

    private static final CalculatorDescriptor DESCRIPTOR = CalculatorDescriptor.of(CircuitCalculator.class)
            .texts(TEXTS)
            .provides(SharedQuantity.TERMINAL_VOLTAGE, SharedQuantity.DELIVERED_POWER, SharedQuantity.DESIGN_CURRENT)
            .reads(
                    "survey.electricity",
                    "survey.site",
                    "survey.unit.age",
                    "survey.unit.guaranteeUntil",
                    "survey.takenOn")
            .supply(Supply.ELECTRICITY)
            .checks(CircuitChecks.ALL)
            .remedies(CircuitRemedyKinds.ALL)
            .parameters(
                    Parameter.optional("ambient", Kind.TEMPERATURE, 30, 10, 60),
                    Parameter.optional("loftAmbient", Kind.TEMPERATURE, 40, 10, 60),
                    Parameter.optional("powerDeviation", Kind.RATIO, 0, -1, 1))
            .formulas(CircuitFormulas.ALL)
            .build();

    @Override
    public CalculatorDescriptor descriptor() {
        return DESCRIPTOR;
    }

    @Override
    public Assessor prepare(Context context) {
        CircuitSurvey survey = CircuitSurvey.of(context);
        CircuitRemedies remedies = new CircuitRemedies(survey);
        LoopData loop = LoopData.of(survey);
        List<CheckGroup> groups = List.of(
                new LoadChecks(survey, remedies),
                new OldCableCheck(survey, remedies),
                new CapacityChecks(survey, remedies, TEXTS, context.parameters().si("loftAmbient")),
                new VoltageDropCheck(survey, remedies),
                new TerminalVoltageChecks(survey, context.parameters().si("powerDeviation")),
                new LoopImpedanceCheck(survey, loop, remedies),
                new EarthPathChecks(survey, remedies),
                new ElectrodeChecks(survey, remedies),
                new ResidualDeviceChecks(survey, remedies),
                new ResidualLoadChecks(survey, remedies),
                new ProtectiveConductorCheck(survey, loop, remedies),
                new FaultLevelCheck(survey, remedies, context),
                new IsolatorChecks(survey, remedies),
                new InstructionChecks(survey, remedies),
                new HeaterRecordChecks(context.survey()),
                new OriginChecks(survey, remedies),
                new ConditionChecks(survey, remedies),
                new RoomChecks(survey, remedies, context),
                new MaximumLengthCheck(survey),
                new HighestPowerCheck(survey));
        return (candidate, shared, findings) -> {
            ShowerCase shower =
                    new ShowerCase(candidate.heater(), ShowerLoad.of(candidate.heater()), candidate.present(), shared);
            for (CheckGroup group : groups) {
                if (findings.asks(group.checks()) || shared.asks(group.provides())) {
                    group.check(shower, findings);
                }
            }
        };
    }
}
