// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import java.util.List;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.TapFit;
import twinfeed.calculator.pressure.survey.TestOrigin;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.Kind;

/** Writes down the loss over the square of the flow of an outlet, {@code R} in bar/(L/min)², by how it is known. */
public final class OutletWorking {
    private static final String SQUARE = "bar/(L/min)²";

    private OutletWorking() {}

    /** Bar over the square of litres a minute of an outlet. */
    static double bar(Outlet outlet) {
        return outlet.resistancePaPerFlow2() / FeedUnits.BAR / FeedUnits.L_PER_MIN / FeedUnits.L_PER_MIN;
    }

    /** From a pressure and a flow that the maker's instructions name. */
    public static Working ofData(Heater heater, Datum datum) {
        return new WorkingLines()
                .input(
                        "p_m",
                        datum.meaning(),
                        Kind.PRESSURE.amount(datum.pressurePa()),
                        "maker's instructions",
                        Origin.heater(heater, datum.pressure()))
                .input(
                        "Q_m",
                        "dataFlow",
                        Kind.FLOW.amount(datum.flowM3PerS()),
                        "maker's instructions",
                        Origin.heater(heater, datum.flow()))
                .step("R", "resistance", "p_m / Q_m^2", SQUARE, "")
                .build();
    }

    /**
     * A pressure at a flow in the data of a heater.
     *
     * @param meaning key of the pressure's meaning
     * @param pressure feature of the heater that has the pressure
     * @param pressurePa the pressure, Pa
     * @param flow feature of the heater that has the flow
     * @param flowM3PerS the flow, m3/s
     */
    public record Datum(String meaning, String pressure, double pressurePa, String flow, double flowM3PerS) {}

    /** From the flow that was measured at the present unit, in the house as surveyed with all taps shut. */
    public static Working measured(FeedConditions surveyed, double flowM3PerS) {
        Working inlet = FeedWorking.inlet(surveyed, 0, flowM3PerS, "survey.unit.measuredFlow");
        return new WorkingLines()
                .include(inlet, "")
                .step("R", "resistance", "p_in / Q^2", SQUARE, "")
                .build();
    }

    /** From the flow that a tap gives when it is open alone, in the house as surveyed. */
    static Working ofTap(TapFit fit, TestOrigin test) {
        WorkingLines lines =
                new WorkingLines().input("Q", "tapAlone", Kind.FLOW.amount(fit.flowM3PerS()), "", fit.flowOrigin());
        FeedWorking.addWater(lines, test.temperatureC(), test.temperatureOrigin());
        FeedWorking.addTest(lines, fit.feed());
        FeedWorking.addSupply(lines, "Q", "");
        FeedWorking.addRun(lines, fit.feed().run(), "Q", "p_s", 1, "p_T");
        List<NamedPipe> branch = fit.branch();
        FeedWorking.addRun(lines, branch, "Q", "p_T", fit.feed().run().size() + 1, "p_o");
        return lines.step("R", "tapResistance", "max(0.01, p_o) / Q^2", SQUARE, "")
                .build();
    }
}
