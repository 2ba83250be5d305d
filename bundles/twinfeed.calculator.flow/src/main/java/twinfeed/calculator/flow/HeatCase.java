// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import twinfeed.calculator.Origin;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.Working;

/**
 * A power that heats from an intake to the wished outlet, as workings begin with it.
 *
 * @param powerW the power, W
 * @param power how it was found, ending in {@code P} in W; empty where nobody says
 * @param wish the wished outlet
 * @param intake index of the intake
 */
record HeatCase(double powerW, Working power, Wish wish, int intake) {
    /** The power that reaches the heater at the survey's own voltage. */
    static HeatCase nominal(SharedQuantities exchange, Wish wish, int intake) {
        return at(exchange, wish, intake, wish.grid().nominal());
    }

    /** The power that reaches the heater at a voltage of the grid. */
    static HeatCase at(SharedQuantities exchange, Wish wish, int intake, int voltage) {
        return new HeatCase(
                exchange.take(SharedQuantity.DELIVERED_POWER)[voltage],
                exchange.working(SharedQuantity.DELIVERED_POWER, voltage),
                wish,
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
                        wish.intakeC(intake),
                        "°C",
                        "",
                        Origin.intake(wish.grid().intakes().get(intake)))
                .input("T_out", "outlet", wish.outletC(), "°C", "", "survey.wishedOutlet");
    }
}
