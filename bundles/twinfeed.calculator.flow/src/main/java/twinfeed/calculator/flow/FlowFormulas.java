// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Heat;
import twinfeed.engineering.water.MainsTemperature;
import twinfeed.engineering.water.Scald;
import twinfeed.engineering.water.Water;
import twinfeed.units.Kind;
import twinfeed.units.text.Texts;

/** The heat balance for a quick question: flow, outlet temperature or power, whichever is asked for; and the cold water. */
final class FlowFormulas {
    private static final double MOST_W = 100e3;
    private static final double MOST_M3_PER_S = 0.01;
    private static final Parameter POWER = Parameter.required("power", Kind.POWER, 1, MOST_W);
    private static final Parameter INTAKE =
            Parameter.required("intake", Kind.TEMPERATURE, Water.LOWEST_C, Water.HIGHEST_C);
    private static final Parameter OUTLET =
            Parameter.optional("outlet", Kind.TEMPERATURE, 40, Water.LOWEST_C, Water.HIGHEST_C);
    private static final Parameter RATED = Parameter.absent("rated", Kind.VOLTAGE, 50, 500);
    private static final Parameter SUPPLY = Parameter.absent("supply", Kind.VOLTAGE, 50, 500);
    private static final Parameter FLOW = Parameter.absent("flow", Kind.FLOW, 0, MOST_M3_PER_S);
    private static final Parameter MASS = Parameter.absent("mass", Kind.MASS_FLOW, 0, 10);

    private static final List<Parameter> MAINS = List.of(
            Parameter.required("mean", Kind.TEMPERATURE, -60, 60),
            Parameter.required("spread", Kind.TEMPERATURE_DIFFERENCE, 0, 100),
            Parameter.word("month", "jan", months()),
            Parameter.word("hemisphere", "north", "north", "south"));

    /** All formulas of this calculator. */
    static final List<Formula> ALL = List.of(
            new Formula("flow", List.of(POWER, RATED, SUPPLY, INTAKE, OUTLET), FlowFormulas::flow),
            new Formula("outlet", List.of(POWER, RATED, SUPPLY, INTAKE, FLOW, MASS), FlowFormulas::outlet),
            new Formula("heat", List.of(FLOW, MASS, INTAKE, OUTLET), FlowFormulas::heat),
            new Formula("mains-temperature", MAINS, FlowFormulas::mainsTemperature));

    private FlowFormulas() {}

    private static Answer flow(Arguments given) {
        Optional<Working.Builder> power = power(given);
        if (power.isEmpty()) {
            return Answer.none("bothVoltages", Working.none());
        }
        Working.Builder lines = power.get();
        double intakeC = given.si("intake");
        double outletC = given.si("outlet");
        Solution mass = Heat.massFlowForOutlet(lines.value("P"), intakeC, outletC);
        if (!mass.isPresent()) {
            return Answer.none(Texts.key(mass.trouble()), lines.build());
        }
        FlowWorking.addFlows(lines, intakeC, outletC, true);
        return warned(
                Answer.of(
                        lines.build(),
                        new Answer.Result("massFlow", Kind.MASS_FLOW, mass.value()),
                        new Answer.Result("inletFlow", Kind.FLOW, Heat.volumeFlowAtInlet(mass.value(), intakeC)),
                        new Answer.Result("outletFlow", Kind.FLOW, Heat.volumeFlowAtOutlet(mass.value(), outletC)),
                        new Answer.Result("power", Kind.POWER, lines.value("P"))),
                outletC);
    }

    /** The power as it is or, with both voltages, as the supply's voltage makes it; one voltage alone says nothing. */
    private static Optional<Working.Builder> power(Arguments given) {
        if (given.has("rated") != given.has("supply")) {
            return Optional.empty();
        }
        return Optional.of(
                given.has("rated")
                        ? FlowWorking.rating(given.si("power"), given.si("rated"), given.si("supply"))
                        : FlowWorking.plain(given.si("power")));
    }

    private static Answer outlet(Arguments given) {
        if (given.has("flow") == given.has("mass")) {
            return Answer.none("flowOrMass", Working.none());
        }
        Optional<Working.Builder> power = power(given);
        if (power.isEmpty()) {
            return Answer.none("bothVoltages", Working.none());
        }
        Working.Builder lines = addMass(power.get(), given);
        Solution outlet = Heat.outletTemperature(lines.value("P"), given.si("intake"), lines.value("m"));
        if (!outlet.isPresent()) {
            return Answer.none(Texts.key(outlet.trouble()), lines.build());
        }
        FlowWorking.addOutlet(lines);
        return warned(
                Answer.of(lines.build(), new Answer.Result("outlet", Kind.TEMPERATURE, outlet.value())),
                outlet.value());
    }

    private static Working.Builder addMass(Working.Builder lines, Arguments given) {
        return given.has("flow")
                ? FlowWorking.addMassFlow(lines, given.si("flow"), given.si("intake"))
                : lines.input("T_in", "intake", given.si("intake"), "°C", "")
                        .input("m", "massFlow", given.si("mass"), "kg/s", "");
    }

    private static Answer heat(Arguments given) {
        if (given.has("flow") == given.has("mass")) {
            return Answer.none("flowOrMass", Working.none());
        }
        double outletC = given.si("outlet");
        Working.Builder lines = addMass(Working.start(), given);
        Solution power = Heat.powerForFlow(lines.value("m"), given.si("intake"), outletC);
        if (!power.isPresent()) {
            return Answer.none(Texts.key(power.trouble()), lines.build());
        }
        FlowWorking.addPower(lines, outletC);
        return warned(Answer.of(lines.build(), new Answer.Result("power", Kind.POWER, power.value())), outletC);
    }

    private static Answer warned(Answer answer, double outletC) {
        if (outletC >= Scald.FROM_C) {
            return answer.warned("scaldStrong");
        }
        return outletC > Scald.UNCOMFORTABLE_C ? answer.warned("scaldFlag") : answer;
    }

    private static Answer mainsTemperature(Arguments given) {
        Month month = Month.of(List.of(months()).indexOf(given.word("month")) + 1);
        boolean southern = "south".equals(given.word("hemisphere"));
        MainsTemperature model = new MainsTemperature(given.si("mean"), given.si("spread"), southern);
        double temperatureC = model.onDay(MainsWorking.middleDay(month));
        return Answer.of(
                MainsWorking.of(given.si("mean"), given.si("spread"), southern, month),
                new Answer.Result("temperature", Kind.TEMPERATURE, temperatureC));
    }

    private static String[] months() {
        String[] words = new String[12];
        for (Month month : Month.values()) {
            words[month.ordinal()] = month.name().substring(0, 3).toLowerCase(Locale.ROOT);
        }
        return words;
    }
}
