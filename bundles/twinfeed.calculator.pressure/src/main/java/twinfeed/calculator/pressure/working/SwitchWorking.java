// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.SwitchState;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.engineering.water.Water;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.units.Kind;

/** Writes down the pressure at a switch in its worst condition. */
public final class SwitchWorking {
    private SwitchWorking() {}

    /** The lines for a switch ahead of the throttle, or behind it. */
    public static Working of(
            UnitFlows flows, SwitchState worst, UnitData unit, double strainer, double lowestHandsetM) {
        OperatingPointWorking point = OperatingPointWorking.of(flows, worst.point());
        boolean make = worst.making() || unit.heater().getBreakPressure() == null;
        UnitLines.addPressure(
                point.lines(),
                LimitType.SYMBOL,
                worst.making() ? "makePressure" : "breakPressure",
                worst.limitPa(),
                unit.heater(),
                make ? "makePressure" : "breakPressure");
        if (worst.place() == SwitchPlace.INLET_CHAMBER) {
            point.addInlet();
            UnitLines.addStrainer(point.lines(), unit, strainer);
            return point.lines()
                    .step("p_sw", "switchPressure", "p_in - R_s * " + point.flow() + "^2", "bar", "")
                    .build();
        }
        point.addFlow();
        UnitLines.addDownstream(point.lines(), unit);
        String build = "R_d * " + point.flow() + "^2";
        if (!worst.making()) {
            build += addHandset(point, flows.feed(), worst.point().intake(), lowestHandsetM);
        }
        return point.lines().step("p_sw", "switchPressure", build, "bar", "").build();
    }

    /** Water in the hose up or down to the handset: its weight counts once the hose is full. */
    private static String addHandset(
            OperatingPointWorking point, FeedConditions feed, int intake, double lowestHandsetM) {
        UnitLines.addHandset(point.lines(), lowestHandsetM);
        point.lines()
                .input("T_h", "intake", feed.intakeC(intake), "°C", "", feed.intakeOrigin(intake))
                .step("rho_h", "density", Water.densityExpression("T_h"), "kg/m³", "IAPWS R7-97(2012), fitted");
        return Kind.PRESSURE.inDisplayUnit(" + rho_h * 9.80665 * z_h");
    }
}
