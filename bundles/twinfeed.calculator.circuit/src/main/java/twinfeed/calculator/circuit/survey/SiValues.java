// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.units.Area;
import twinfeed.units.Quantity;

/** Readings as plain numbers; a reading not taken stays absent. */
public final class SiValues {
    private static final double MM2_PER_M2 = 1e6;

    private SiValues() {}

    public static @Nullable Double of(@Nullable Quantity reading) {
        return reading == null ? null : reading.si();
    }

    public static @Nullable Double mm2(@Nullable Area reading) {
        return reading == null ? null : mm2(reading.si());
    }

    /** A cross-section of a table, mm2, in SI. */
    public static double m2(double mm2) {
        return mm2 / MM2_PER_M2;
    }

    /** Cross-sections are kept in mm2 here, as tables and people have them; the rounding takes out the noise of the factor. */
    public static double mm2(double m2) {
        return Math.round(m2 * MM2_PER_M2 * 1e6) / 1e6;
    }
}
