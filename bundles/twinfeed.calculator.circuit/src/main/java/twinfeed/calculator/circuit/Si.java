// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import org.jspecify.annotations.Nullable;
import twinfeed.units.Area;
import twinfeed.units.Quantity;

/** Readings as plain numbers; a reading not taken stays absent. */
final class Si {
    private static final double MM2_PER_M2 = 1e6;

    private Si() {}

    static @Nullable Double of(@Nullable Quantity reading) {
        return reading == null ? null : reading.si();
    }

    static @Nullable Double mm2(@Nullable Area reading) {
        return reading == null ? null : mm2(reading.si());
    }

    /** Cross-sections are kept in mm2 here, as tables and people have them; the rounding takes out the noise of the factor. */
    static double mm2(double m2) {
        return Math.round(m2 * MM2_PER_M2 * 1e6) / 1e6;
    }
}
