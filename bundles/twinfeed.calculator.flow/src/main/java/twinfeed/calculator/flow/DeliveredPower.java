// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Grid;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.engineering.water.Heat;
import twinfeed.model.catalogue.Heater;

/** The power that reaches a heater at the survey's own voltage. */
final class DeliveredPower {
    private DeliveredPower() {}

    /** The power, W; ask first whether it was given. */
    static double nominalW(SharedQuantities shared, Grid grid) {
        return shared.get(SharedQuantity.DELIVERED_POWER)[grid.nominal()];
    }

    /** Whether a check lacks a reading of its own or the power; if so, that is said and the next check is on. */
    static boolean blocked(Check check, SharedQuantities shared, Findings findings) {
        return findings.blocked(check) || findings.blocked(check, shared, SharedQuantity.DELIVERED_POWER);
    }

    /** Whether a heater's rating can be worked with: power and voltage are there and more than 0. */
    static boolean rated(@Nullable Heater heater) {
        return heater != null
                && heater.getPower() != null
                && heater.getVoltage() != null
                && heater.getPower().si() > 0
                && heater.getVoltage().si() > 0;
    }

    /**
     * The power, W, that another heater would take at the end of the same cable. The cable's resistance follows from the
     * first heater: r = R (U0/U - 1). Its small change with the other current is left out.
     *
     * @param first the heater whose power is known
     * @param firstW the power that it takes, W
     * @param originV voltage at the origin, V
     * @param other the other heater, rated
     */
    static double ofOtherW(Heater first, double firstW, double originV, Heater other) {
        double firstOhm = resistance(first);
        double firstV = Math.sqrt(firstW * firstOhm);
        double cableOhm = Math.max(0, firstOhm * (originV / firstV - 1));
        double otherOhm = resistance(other);
        return Heat.powerOfResistance(otherOhm, originV * otherOhm / (otherOhm + cableOhm));
    }

    private static double resistance(Heater heater) {
        return Heat.elementResistance(
                heater.getPower().si(), heater.getVoltage().si());
    }
}
