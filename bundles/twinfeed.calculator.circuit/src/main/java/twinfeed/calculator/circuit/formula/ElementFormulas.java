// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.List;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.water.Heat;
import twinfeed.units.Kind;

/** The heater as a resistance. */
public final class ElementFormulas {
    private static final double LEAST_OHM = 0.1;
    private static final double MOST_OHM = 10_000;

    static final Formula ELEMENT = new Formula(
            "element",
            List.of(
                    Parameter.required("power", Kind.POWER, 1, 100e3),
                    FormulaParameters.RATED,
                    FormulaParameters.SUPPLY),
            ElementFormulas::element);

    static final Formula ELEMENTS = new Formula(
            "elements",
            List.of(
                    Parameter.required("first", Kind.RESISTANCE, LEAST_OHM, MOST_OHM),
                    Parameter.required("second", Kind.RESISTANCE, LEAST_OHM, MOST_OHM),
                    FormulaParameters.SUPPLY),
            ElementFormulas::elements);

    private ElementFormulas() {}

    private static Answer element(Arguments given) {
        double ratedW = given.si("power");
        double ratedV = given.si("rated");
        double supplyV = given.si("supply");
        Working working = Working.start()
                .input("Pr", "ratedPower", ratedW, "W", "")
                .input("Ur", "ratedVoltage", ratedV, "V", "")
                .step("R", "elementResistance", "Ur^2 / Pr", "Ω", "")
                .step("Ib", "designCurrent", "Pr / Ur", "A", "")
                .input("U", "originVoltage", supplyV, "V", "")
                .step("I", "flowingCurrentPlain", "U / R", "A", "")
                .step("P", "deliveredPower", "U^2 / R / 1000", "kW", "")
                .build();
        return Answer.of(
                working,
                new Answer.Result("power", Kind.POWER, Heat.powerAtVoltage(ratedW, ratedV, supplyV)),
                new Answer.Result("current", Kind.CURRENT, Heat.currentAt(ratedW, ratedV, supplyV)),
                new Answer.Result("resistance", Kind.RESISTANCE, Heat.elementResistance(ratedW, ratedV)),
                new Answer.Result("designCurrent", Kind.CURRENT, Heat.currentAt(ratedW, ratedV, ratedV)));
    }

    private static Answer elements(Arguments given) {
        double supplyV = given.si("supply");
        double ohm = Heat.parallelResistance(given.si("first"), given.si("second"));
        Working working = Working.start()
                .input("R1", "firstElement", given.si("first"), "Ω", "")
                .input("R2", "secondElement", given.si("second"), "Ω", "")
                .step("R", "elementResistance", "1 / (1 / R1 + 1 / R2)", "Ω", "")
                .input("U", "originVoltage", supplyV, "V", "")
                .step("P", "deliveredPower", "U^2 / R / 1000", "kW", "")
                .build();
        return Answer.of(
                working,
                new Answer.Result("power", Kind.POWER, Heat.powerOfResistance(ohm, supplyV)),
                new Answer.Result("resistance", Kind.RESISTANCE, ohm),
                new Answer.Result("current", Kind.CURRENT, supplyV / ohm));
    }
}
