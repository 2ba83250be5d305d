// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import twinfeed.engineering.numeric.Require;

/**
 * The curve of a supply through a two-point test by one exponent throughout, for whoever knows it: {@link SupplyCurve} takes the less
 * favourable one on each side of the test.
 *
 * @param test the test
 * @param exponent n, 1..2
 */
public record PowerCurve(SupplyCurve test, double exponent) implements Supply {
    /** Checks the range. */
    public PowerCurve {
        Require.within(exponent, 1, 2, "exponent");
    }

    @Override
    public double pressureAt(double flowM3PerS) {
        return test.pressureAt(flowM3PerS, exponent);
    }

    @Override
    public double slopeAt(double flowM3PerS) {
        double ratio = Require.notNegative(flowM3PerS, "flowM3PerS") / test.testFlowM3PerS();
        return Require.result(-exponent * test.dropPa() / test.testFlowM3PerS() * Math.pow(ratio, exponent - 1));
    }
}
