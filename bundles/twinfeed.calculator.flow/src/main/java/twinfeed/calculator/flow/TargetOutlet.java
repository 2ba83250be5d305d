// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.Context;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Intake;
import twinfeed.engineering.water.Water;
import twinfeed.model.survey.Survey;
import twinfeed.model.usual.UsualValues;
import twinfeed.units.Amount;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/**
 * The target outlet temperature, with the heat that every intake of the grid needs, worked out once for all heaters.
 *
 * <p>A temperature outside liquid water is no target: {@link #faults} names the reading and there is no heat.
 */
final class TargetOutlet {
    /** More than any such shower passes: judgement. Where so much could be heated, the pipes decide and not the power. */
    static final Amount AMPLE = Kind.FLOW.amount(DisplayUnit.of(Kind.FLOW).toSi(30));

    /** The variant of a text where the water needs no heat. */
    static final String UNHEATED = "unheated";

    private final double outletC;
    private final double outletDensity;
    private final Grid grid;
    private final double[] riseJPerKg;
    private final double[] inletDensity;
    private final List<String> faults;

    private TargetOutlet(double outletC, Grid grid, List<String> faults) {
        this.outletC = outletC;
        this.grid = grid;
        this.faults = List.copyOf(faults);
        int count = grid.intakes().size();
        this.riseJPerKg = new double[count];
        this.inletDensity = new double[count];
        this.outletDensity = faults.isEmpty() ? Water.density(outletC) : 0;
        for (int i = 0; i < count && faults.isEmpty(); i++) {
            double intakeC = intakeC(i);
            riseJPerKg[i] = Math.max(0, Water.enthalpy(outletC) - Water.enthalpy(intakeC));
            inletDensity[i] = Water.density(intakeC);
        }
    }

    /** The target of a survey; a default is recorded as an assumption. */
    static TargetOutlet of(Context context) {
        Survey survey = context.survey();
        double outletC = UsualValues.targetOutletC(survey);
        if (survey.getTargetOutlet() == null) {
            context.assume("targetOutlet", Map.of("temperature", outletC));
        }
        List<String> faults = new ArrayList<>();
        if (!liquid(outletC)) {
            faults.add("survey.targetOutlet");
        }
        for (Intake intake : context.grid().intakes()) {
            String reading = intake.design() ? "survey.winterIntake" : "survey.climate";
            if (!liquid(intake.temperatureC()) && !faults.contains(reading)) {
                faults.add(reading);
            }
        }
        return new TargetOutlet(outletC, context.grid(), faults);
    }

    private static boolean liquid(double temperatureC) {
        return temperatureC >= Water.LOWEST_C && temperatureC <= Water.HIGHEST_C;
    }

    /** Readings that are no temperatures of liquid water; empty where the target can be worked with. */
    List<String> faults() {
        return faults;
    }

    /** The target outlet temperature, degC. */
    double outletC() {
        return outletC;
    }

    /** The conditions. */
    Grid grid() {
        return grid;
    }

    /** An intake temperature, degC. */
    double intakeC(int intake) {
        return grid.intakes().get(intake).temperatureC();
    }

    /** Whether an intake has to be heated at all. */
    boolean heats(int intake) {
        return riseJPerKg[intake] > 0;
    }

    /** Mass flow, kg/s, that a power heats from an intake to the target; 0 where nothing has to be heated. */
    double massFlow(double powerW, int intake) {
        return heats(intake) ? powerW / riseJPerKg[intake] : 0;
    }

    /** The same as volume at the inlet, m3/s: what the pipes carry. */
    double inletFlow(double powerW, int intake) {
        return massFlow(powerW, intake) / inletDensity[intake];
    }

    /** The same as volume at the outlet, m3/s: what a bucket catches. */
    double outletFlow(double powerW, int intake) {
        return massFlow(powerW, intake) / outletDensity;
    }

    /** The variant of a text that names a flow: one over what a shower passes is said in words. */
    static String variant(double flowM3PerS) {
        return flowM3PerS > AMPLE.si() ? "ample" : "";
    }

    /** Index of the warmest month; of the design intake where the grid has no months. */
    int warmest() {
        int warmest = grid.intakes().size() - 1;
        for (int i = warmest - 1; i > 0; i--) {
            if (intakeC(i) > intakeC(warmest)) {
                warmest = i;
            }
        }
        return warmest;
    }

    /** Index of the coldest month; of the design intake where the grid has no months. */
    int coldest() {
        int coldest = Math.min(1, grid.intakes().size() - 1);
        for (int i = coldest + 1; i < grid.intakes().size(); i++) {
            if (intakeC(i) < intakeC(coldest)) {
                coldest = i;
            }
        }
        return coldest;
    }
}
