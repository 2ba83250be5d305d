// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import twinfeed.engineering.numeric.SlopedValue;

/** What a search needs of a {@link Supply} besides its pressure. */
final class Gauge {
    private Gauge() {}

    /** Works out the pressure, Pa, at a flow, m3/s, zero or more, and its slope: one power for both. */
    static void at(Supply supply, double flow, SlopedValue out) {
        if (supply instanceof SupplyCurve curve) {
            curve.at(flow, out);
        } else {
            out.set(supply.pressureAt(flow), supply.slopeAt(flow));
        }
    }

    /** A drop over the square of the flow of about the right size, Pa/(m3/s)2: for the start of a search. */
    static double likelyPaPerFlow2(Supply supply) {
        return supply instanceof SupplyCurve curve
                ? curve.dropPa() / (curve.testFlowM3PerS() * curve.testFlowM3PerS())
                : 0;
    }
}
