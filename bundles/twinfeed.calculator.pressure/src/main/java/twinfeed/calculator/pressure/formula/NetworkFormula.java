// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.formula;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.Answer;
import twinfeed.calculator.Arguments;
import twinfeed.calculator.Formula;
import twinfeed.calculator.Parameter;
import twinfeed.calculator.Working;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.ReadingLimits;
import twinfeed.calculator.pressure.working.FeedWorking;
import twinfeed.calculator.pressure.working.WorkingLines;
import twinfeed.engineering.network.FixedPressure;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.NetworkState;
import twinfeed.engineering.network.Supply;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.SupplyTest;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;
import twinfeed.units.Kind;

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
        if (given.has("running")) {
            SupplyTest test = SupplyTest.of(given.si("static"), given.si("running"), given.si("flow"));
            if (!test.isAccepted()) {
                return Answer.none(
                        FormulaTerms.key(
                                test == SupplyTest.FLOW_NOT_POSITIVE
                                        ? FailureReason.FLOW_NOT_POSITIVE
                                        : FailureReason.RUNNING_NOT_BELOW_STATIC),
                        Working.none());
            }
        }
        for (String pipe : List.of("common", "shower", "tap")) {
            if (given.si(pipe + "-roughness") > given.si(pipe + "-bore") * Pipe.LARGEST_RELATIVE_ROUGHNESS) {
                return Answer.none("tooRough", Working.none());
            }
        }
        return solve(given);
    }

    private static Supply supply(Arguments given) {
        return given.has("running")
                ? new SupplyCurve(given.si("static"), given.si("running"), given.si("flow"))
                : new FixedPressure(given.si("static"));
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
        Tap tap = new Tap(List.of(pipe(given, "tap")), Outlet.ofCoefficient(given.si("tap-outlet"), fluid));
        Outlet shower = Outlet.ofCoefficient(given.si("shower-outlet"), fluid);
        List<Tap> open = "open".equals(given.word("tap")) ? List.of(tap) : List.of();
        Network network =
                Network.of(supply(given), List.of(pipe(given, "common")), List.of(pipe(given, "shower")), open, fluid);
        NetworkState state = network.atOutlet(shower, 0);
        if (state.unitFlowM3PerS() <= 0) {
            return Answer.none(FormulaTerms.key(FailureReason.SUPPLY_TOO_WEAK), Working.none());
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
        lines.input("Qt", "totalFlow", total * FeedUnits.L_PER_MIN, "L/min", "found by a bracketed search");
        if (supply(given) instanceof SupplyCurve curve) {
            FeedWorking.addTest(lines, curve);
            FeedWorking.addSupply(lines, "Qt", "");
        } else {
            lines.input("p_s", "supplyPressure", given.si("static") / FeedUnits.BAR, "bar", "");
        }
        FeedWorking.addRun(lines, List.of(new NamedPipe("common", pipe(given, "common"))), "Qt", "p_s", 1, "p_T");
        lines.input("Q", "unitFlow", state.unitFlowM3PerS() * FeedUnits.L_PER_MIN, "L/min", "found with it");
        FeedWorking.addRun(lines, List.of(new NamedPipe("shower", pipe(given, "shower"))), "Q", "p_T", 2, "p_in");
        double head = fluid.pressureOfHead(1) / FeedUnits.BAR;
        return lines.input("p_m", "metreOfHead", head, "bar", "")
                .input("C", "outletFlow", given.si("shower-outlet") * FeedUnits.L_PER_MIN, "L/min", "")
                .step("Q_s", "unitFlow", "C * sqrt(p_in / p_m)", "L/min", "")
                .build();
    }
}
