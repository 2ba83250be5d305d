// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Kind;
import twinfeed.units.Quantity;

/** Writes down the data of a unit from which checks go on. */
public final class UnitLines {
    private static final double TO_BAR = FeedUnits.BAR * FeedUnits.L_PER_MIN * FeedUnits.L_PER_MIN;
    private static final String MAKER = "maker's instructions";

    private UnitLines() {}

    /** Loss of strainer and solenoid valve over the square of the flow, {@code R_s}. */
    static void addStrainer(WorkingLines lines, UnitData unit, double strainer) {
        Heater heater = unit.heater();
        addResistance(
                lines,
                "R_s",
                "strainerResistance",
                unit.strainer() == null
                        ? null
                        : datum(
                                heater,
                                "strainerLoss",
                                "inletLoss",
                                heater.getInletLoss(),
                                "inletLossFlow",
                                heater.getInletLossFlow()),
                heater,
                strainer);
    }

    /** Pressure behind the throttle over the square of the flow, {@code R_d}. */
    static void addDownstream(WorkingLines lines, UnitData unit) {
        Heater heater = unit.heater();
        Double downstream = unit.downstream();
        addResistance(
                lines,
                "R_d",
                "downstreamResistance",
                downstream == null
                        ? null
                        : datum(
                                heater,
                                "buildPressure",
                                "downstreamPressure",
                                heater.getDownstreamPressure(),
                                "downstreamFlow",
                                heater.getDownstreamFlow()),
                heater,
                downstream == null ? 0 : downstream);
    }

    private static OutletWorking.Datum datum(
            Heater heater, String meaning, String pressure, Quantity pressurePa, String flow, Quantity flowM3PerS) {
        return new OutletWorking.Datum(meaning, pressure, pressurePa.si(), flow, flowM3PerS.si());
    }

    private static void addResistance(
            WorkingLines lines,
            String symbol,
            String meaning,
            OutletWorking.@Nullable Datum datum,
            Heater heater,
            double resistance) {
        if (datum == null) {
            lines.input(symbol, meaning, resistance / TO_BAR, "bar/(L/min)²", "", "usual." + meaning);
        } else {
            lines.include(OutletWorking.ofData(heater, datum), symbol.substring(1));
        }
    }

    /** The unit fully open by its least running pressure, as {@link OutletWorking#ofData} has it. */
    public static Working need(Heater heater) {
        return OutletWorking.ofData(
                heater,
                datum(
                        heater,
                        "leastRunning",
                        "minimumRunningPressure",
                        heater.getMinimumRunningPressure(),
                        "runningPressureFlow",
                        heater.getRunningPressureFlow()));
    }

    /** The pressure that the throttle needs at a flow, {@code lim}. */
    public static void addThrottleNeed(WorkingLines lines, UnitData unit, String flow) {
        addDownstream(lines, unit);
        Heater heater = unit.heater();
        addPressure(lines, "p_t", "throttleLeast", heater.getThrottleMinimum().si(), heater, "throttleMinimum");
        lines.step(LimitType.SYMBOL, "throttleNeed", "R_d * " + flow + "^2 + max(0, p_t)", "bar", MAKER);
    }

    /** A pressure of the maker's instructions, bar. */
    public static void addPressure(
            WorkingLines lines, String symbol, String meaning, double pressurePa, Heater heater, String datum) {
        lines.input(symbol, meaning, Kind.PRESSURE.amount(pressurePa), MAKER, Origin.heater(heater, datum));
    }

    /** A flow of the maker's instructions, L/min. */
    public static void addFlow(
            WorkingLines lines, String symbol, String meaning, double flowM3PerS, Heater heater, String datum) {
        lines.input(symbol, meaning, Kind.FLOW.amount(flowM3PerS), MAKER, Origin.heater(heater, datum));
    }

    /** The pressure at which the switch opens, {@code p_b}: without a figure of its own that at which it closes. */
    static void addBreakPressure(WorkingLines lines, Heater heater, double breakPa) {
        addPressure(
                lines,
                "p_b",
                "breakPressure",
                breakPa,
                heater,
                heater.getBreakPressure() == null ? "makePressure" : "breakPressure");
    }

    /** Height of the lowest handset position over the unit, {@code z_h}. */
    static void addHandset(WorkingLines lines, double heightM) {
        lines.input("z_h", "handset", heightM, "m", "", "survey.water.lowestHandset");
    }
}
