// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

/** What feeds the pipework: a pressure at the gauge that does not rise with the flow. */
public sealed interface Supply permits SupplyCurve, PowerCurve, FixedPressure, PumpedSupply {
    /**
     * Returns the pressure, Pa, at the gauge at a flow, m3/s, zero or more. Below zero it means that the supply cannot
     * give this flow.
     */
    double pressureAt(double flowM3PerS);

    /** Returns the slope of the pressure by the flow, Pa s/m3, zero or below, at a flow, m3/s, zero or more. */
    double slopeAt(double flowM3PerS);
}
