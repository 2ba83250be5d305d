// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Working;
import twinfeed.calculator.pressure.hydraulics.SwitchState;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.engineering.water.Water;
import twinfeed.model.catalogue.SwitchPlace;

/** Writes down the pressure at a switch in its worst condition. */
public final class SwitchWorking {
    private static final double TO_BAR = FeedUnits.BAR * FeedUnits.L_PER_MIN * FeedUnits.L_PER_MIN;

    private SwitchWorking() {}

    /** The lines for a switch ahead of the throttle, or behind it. */
    public static Working of(
            UnitFlows flows, SwitchState worst, double strainer, @Nullable Double downstream, double lowestHandsetM) {
        OperatingPointWorking point = new OperatingPointWorking(flows.feed(), worst.point(), flows.fullBore());
        if (worst.place() == SwitchPlace.INLET_CHAMBER) {
            point.addInlet();
            return point.lines()
                    .input("R_s", "strainerResistance", strainer / TO_BAR, "bar/(L/min)²", "")
                    .step("p_sw", "switchPressure", "p_in - R_s * " + point.flow() + "^2", "bar", "")
                    .build();
        }
        point.addFlow();
        point.lines().input("R_d", "downstreamResistance", known(downstream) / TO_BAR, "bar/(L/min)²", "");
        String build = "R_d * " + point.flow() + "^2";
        if (!worst.making()) {
            build += addHandset(point, flows.feed().intakeC(worst.point().intake()), lowestHandsetM);
        }
        return point.lines().step("p_sw", "switchPressure", build, "bar", "").build();
    }

    private static double known(@Nullable Double downstream) {
        if (downstream == null) {
            throw new IllegalStateException("a switch in the heating chamber without its pressure");
        }
        return downstream;
    }

    /** Water in the hose up or down to the handset: its weight counts once the hose is full. */
    private static String addHandset(OperatingPointWorking point, double intakeC, double lowestHandsetM) {
        point.lines()
                .input("z_h", "handset", lowestHandsetM, "m", "")
                .input("T_h", "intake", intakeC, "°C", "")
                .step("rho_h", "density", Water.densityExpression("T_h"), "kg/m³", "IAPWS R7-97(2012), fitted");
        return " + rho_h * 9.80665 * z_h / 100000";
    }
}
