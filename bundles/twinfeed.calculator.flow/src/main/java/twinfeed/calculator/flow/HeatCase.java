// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Working;

/**
 * A power that heats from an intake to the target temperature, as workings begin with it.
 *
 * @param powerW the power, W
 * @param power how it was found, ending in {@code P} in W; empty where nobody says
 * @param target the target outlet
 * @param intake index of the intake
 */
record HeatCase(double powerW, Working power, TargetOutlet target, int intake) {
    /** The power that reaches the heater at the survey's own voltage. */
    static HeatCase nominal(SharedQuantities shared, TargetOutlet target, int intake) {
        return at(shared, target, intake, target.grid().nominal());
    }

    /** The power that reaches the heater at a voltage of the grid. */
    static HeatCase at(SharedQuantities shared, TargetOutlet target, int intake, int voltage) {
        return new HeatCase(
                shared.get(SharedQuantity.DELIVERED_POWER)[voltage],
                shared.working(SharedQuantity.DELIVERED_POWER, voltage),
                target,
                intake);
    }

    /** Starts a working with the power {@code P}. */
    Working.Builder start() {
        return power.steps().isEmpty()
                ? Working.start().input("P", "power", powerW, "W", "")
                : Working.start().include(power, "");
    }

    /** Adds the two temperatures. */
    Working.Builder temperatures(Working.Builder lines) {
        return lines.input(
                        "T_in",
                        "intake",
                        target.intakeC(intake),
                        "°C",
                        "",
                        target.grid().intakes().get(intake).origin())
                .input("T_out", "outlet", target.outletC(), "°C", "", "survey.targetOutlet");
    }
}
