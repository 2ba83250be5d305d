// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.formula;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.ReadingLimits;
import twinfeed.calculator.pressure.working.FeedWorking;
import twinfeed.calculator.pressure.working.WorkingLines;
import twinfeed.engineering.network.FixedPressure;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.NetworkState;
import twinfeed.engineering.network.PowerCurve;
import twinfeed.engineering.network.PumpedSupply;
import twinfeed.engineering.network.Supply;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.SupplyTest;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;
import twinfeed.units.text.Texts;

/**
 * A supply, a common pipe to a tee, a branch to a shower and one to a tap: the flow of the shower with the tap shut or open.
 * Outlets are given by the flow that one metre of head drives through them. Without a running test the supply is stiff.
 */
final class NetworkFormula {

    /** The formula {@code network}. */
    static final Formula FORMULA = new Formula("network", parameters(), NetworkFormula::of);

    private NetworkFormula() {}

    private static List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>(List.of(
                Parameter.required("static", Kind.PRESSURE, 1000, FormulaTerms.MOST_PA),
                Parameter.absent("running", Kind.PRESSURE, 0, FormulaTerms.MOST_PA),
                Parameter.absent("flow", Kind.FLOW, -ReadingLimits.MAX_FLOW_M3_PER_S, ReadingLimits.MAX_FLOW_M3_PER_S),
                Parameter.absent("exponent", Kind.RATIO, 1, 2),
                Parameter.absent("pump", Kind.PRESSURE, 1000, FormulaTerms.MOST_PA),
                Parameter.absent("pump-flow", Kind.FLOW, 1e-6, ReadingLimits.MAX_FLOW_M3_PER_S),
                Parameter.absent("shower-outlet-bore", Kind.LENGTH, 0.001, 1),
                Parameter.absent("tap-outlet-bore", Kind.LENGTH, 0.001, 1),
                Parameter.word("tap", "open", "open", "shut"),
                Parameter.required("shower-outlet", Kind.FLOW, 1e-7, 0.01),
                Parameter.optional("tap-outlet", Kind.FLOW, 1e-4, 1e-7, 0.01),
                FormulaTerms.TEMPERATURE));
        for (String pipe : List.of("common", "shower", "tap")) {
            parameters.add(Parameter.optional(pipe + "-bore", Kind.LENGTH, 0.0136, 0.001, 1));
            parameters.add(Parameter.optional(pipe + "-length", Kind.LENGTH, 0, 0, 10_000));
            parameters.add(Parameter.optional(pipe + "-roughness", Kind.LENGTH, 1.5e-6, 0, 0.01));
            parameters.add(Parameter.optional(pipe + "-k", Kind.RATIO, 0, 0, 1000));
            parameters.add(Parameter.optional(pipe + "-rise", Kind.LENGTH, 0, -100, 100));
        }
        return parameters;
    }

    private static Answer of(Arguments given) {
        if (given.has("running") != given.has("flow")) {
            return Answer.none("runningAndFlow", Working.none());
        }
        if (given.has("pump") != given.has("pump-flow")) {
            return Answer.none("pumpAndFlow", Working.none());
        }
        if (given.has("exponent") && !given.has("running")) {
            return Answer.none("exponentWithoutTest", Working.none());
        }
        if (given.has("running")) {
            SupplyTest test = SupplyTest.of(given.si("static"), given.si("running"), given.si("flow"));
            if (!test.isAccepted()) {
                return FormulaTerms.refused(test);
            }
        }
        for (String pipe : List.of("common", "shower", "tap")) {
            if (given.si(pipe + "-roughness") > given.si(pipe + "-bore") * Pipe.LARGEST_RELATIVE_ROUGHNESS) {
                return Answer.none("tooRough", Working.none());
            }
        }
        return solve(given);
    }

    /** Without an exponent of its own the less favourable one on each side of the test. */
    private static Supply supply(Arguments given) {
        if (!given.has("running")) {
            return new FixedPressure(given.si("static"));
        }
        SupplyCurve test = test(given);
        return given.has("exponent") ? new PowerCurve(test, given.si("exponent")) : test;
    }

    private static SupplyCurve test(Arguments given) {
        return new SupplyCurve(given.si("static"), given.si("running"), given.si("flow"));
    }

    private static Supply pumped(Arguments given) {
        return given.has("pump")
                ? new PumpedSupply(supply(given), given.si("pump"), given.si("pump-flow"))
                : supply(given);
    }

    /** What drives a flow out: the outlet's own loss and, where its bore is given, the velocity that the water leaves with. */
    private static Outlet outlet(Arguments given, String name, Fluid fluid) {
        Outlet outlet = Outlet.ofCoefficient(given.si(name + "-outlet"), fluid);
        String bore = name + "-outlet-bore";
        if (!given.has(bore)) {
            return outlet;
        }
        double area = Math.PI * given.si(bore) * given.si(bore) / 4;
        return new Outlet(outlet.resistancePaPerFlow2() + fluid.densityKgPerM3() / (2 * area * area), 0);
    }

    private static PipeSegment pipe(Arguments given, String name) {
        return new PipeSegment(
                given.si(name + "-length"),
                given.si(name + "-bore"),
                given.si(name + "-roughness"),
                given.si(name + "-k"),
                given.si(name + "-rise"));
    }

    private static Answer solve(Arguments given) {
        Fluid fluid = Fluid.waterAt(given.si("temperature"));
        Tap tap = new Tap(List.of(pipe(given, "tap")), outlet(given, "tap", fluid));
        Outlet shower = outlet(given, "shower", fluid);
        List<Tap> open = "open".equals(given.word("tap")) ? List.of(tap) : List.of();
        Network network =
                Network.of(pumped(given), List.of(pipe(given, "common")), List.of(pipe(given, "shower")), open, fluid);
        NetworkState state = network.atOutlet(shower, 0);
        if (state.unitFlowM3PerS() <= 0) {
            return Answer.none(Texts.key(FailureReason.SUPPLY_TOO_WEAK), Working.none());
        }
        return answer(given, state, fluid);
    }

    private static Answer answer(Arguments given, NetworkState state, Fluid fluid) {
        List<Answer.Result> results = new ArrayList<>(List.of(
                new Answer.Result("showerFlow", Kind.FLOW, state.unitFlowM3PerS()),
                new Answer.Result("showerPressure", Kind.PRESSURE, state.unitInletPressurePa()),
                new Answer.Result("teePressure", Kind.PRESSURE, state.teePressurePa())));
        if (!state.tapFlowsM3PerS().isEmpty()) {
            results.add(new Answer.Result(
                    "tapFlow", Kind.FLOW, state.tapFlowsM3PerS().get(0)));
        }
        return Answer.of(working(given, state, fluid), results.toArray(Answer.Result[]::new));
    }

    /** The balance along the shower's way, at the flows that were found. */
    private static Working working(Arguments given, NetworkState state, Fluid fluid) {
        WorkingLines lines = new WorkingLines();
        FeedWorking.addWater(lines, given.si("temperature"));
        double total = state.totalFlowM3PerS();
        lines.input("Qt", "totalFlow", Kind.FLOW.amount(total), "found by a bracketed search");
        String atGauge = addSupply(lines, given);
        FeedWorking.addRun(lines, List.of(new NamedPipe("common", pipe(given, "common"))), "Qt", atGauge, 1, "p_T");
        lines.input("Q", "unitFlow", Kind.FLOW.amount(state.unitFlowM3PerS()), "found with it");
        FeedWorking.addRun(lines, List.of(new NamedPipe("shower", pipe(given, "shower"))), "Q", "p_T", 2, "p_in");
        double head = fluid.pressureOfHead(1) / FeedUnits.BAR;
        lines.input("p_m", "metreOfHead", head, "bar", "")
                .input("C", "outletFlow", Kind.FLOW.amount(given.si("shower-outlet")), "");
        if (!given.has("shower-outlet-bore")) {
            return lines.step("Q_s", "unitFlow", "C * sqrt(p_in / p_m)", "L/min", "")
                    .build();
        }
        return lines.input("D_o", "outletBore", DisplayUnit.MILLIMETRE.amount(given.si("shower-outlet-bore")), "")
                .step("w_o", "outletVelocity", FeedWorking.velocity("1", "_o"), "m/s", "")
                .step("h_o", "outletVelocityHead", Kind.PRESSURE.inDisplayUnit("rho / 2 * w_o^2"), "bar/(L/min)²", "")
                .step("Q_s", "unitFlow", "sqrt(p_in / (p_m / C^2 + h_o))", "L/min", "")
                .build();
    }

    /** Adds the pressure that the supply, and the pump where there is one, leave at the total flow; returns its symbol. */
    private static String addSupply(WorkingLines lines, Arguments given) {
        if (!given.has("running")) {
            lines.input("p_s", "supplyPressure", Kind.PRESSURE.amount(given.si("static")), "");
        } else {
            FeedWorking.addTest(lines, test(given));
            if (given.has("exponent")) {
                lines.input("n", "exponent", given.si("exponent"), "", "")
                        .step("p_s", "supplyPressure", "p_0 - (p_0 - p_1) * (Qt / Q_1)^n", "bar", "form of NFPA 291");
            } else {
                FeedWorking.addSupply(lines, "Qt", "");
            }
        }
        if (!given.has("pump")) {
            return "p_s";
        }
        lines.input("p_P", "pumpShutOff", Kind.PRESSURE.amount(given.si("pump")), "")
                .input("Q_P", "pumpFlow", Kind.FLOW.amount(given.si("pump-flow")), "")
                .step(
                        "p_sp",
                        "pumpedPressure",
                        "p_s + p_P * max(0, 1 - (Qt / Q_P)^2)",
                        "bar",
                        "parabola of a centrifugal pump");
        return "p_sp";
    }
}
