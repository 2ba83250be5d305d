// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import twinfeed.engineering.numeric.Require;

/**
 * A supply whose pressure does not fall with the flow: a tank, or a stiff main.
 *
 * @param pressurePa pressure at the gauge, Pa, zero or more
 */
public record FixedPressure(double pressurePa) implements Supply {
    /** Checks the range. */
    public FixedPressure {
        Require.notNegative(pressurePa, "pressurePa");
    }

    @Override
    public double pressureAt(double flowM3PerS) {
        Require.notNegative(flowM3PerS, "flowM3PerS");
        return pressurePa;
    }

    @Override
    public double slopeAt(double flowM3PerS) {
        Require.notNegative(flowM3PerS, "flowM3PerS");
        return 0;
    }
}
