// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import twinfeed.engineering.numeric.Require;

/**
 * Where the pressure between the static supply and the unit's inlet goes, so that a remedy is put where the loss is.
 *
 * @param supplyPa drop of the supply itself, Pa
 * @param frictionPa friction in pipes, Pa
 * @param fittingPa fittings, Pa
 * @param heightPa height, Pa; negative when the unit is below the gauge
 */
public record LossShares(double supplyPa, double frictionPa, double fittingPa, double heightPa) {
    /** Refuses what is not a number. */
    public LossShares {
        Require.finite(supplyPa, "supplyPa");
        Require.finite(frictionPa, "frictionPa");
        Require.finite(fittingPa, "fittingPa");
        Require.finite(heightPa, "heightPa");
    }

    /** Returns all of it: static pressure less the pressure at the unit's inlet, Pa. */
    public double totalPa() {
        return Require.result(supplyPa + frictionPa + fittingPa + heightPa);
    }
}
