// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import twinfeed.engineering.numeric.Require;

/**
 * A supply with a pump behind its gauge: p(Q) = p_supply(Q) + p_pump (1 - (Q / Q_pump)^2), the usual parabola of a centrifugal pump. Beyond
 * Q_pump it adds nothing, as water runs round it or through it freely.
 *
 * @param supply the supply at its gauge
 * @param shutOffPa p_pump, what the pump adds while nothing flows, Pa, positive
 * @param largestFlowM3PerS Q_pump, the flow at which it adds nothing, m3/s, positive
 */
public record PumpedSupply(Supply supply, double shutOffPa, double largestFlowM3PerS) implements Supply {
    /** Checks the ranges. */
    public PumpedSupply {
        Require.positive(shutOffPa, "shutOffPa");
        Require.positive(largestFlowM3PerS, "largestFlowM3PerS");
    }

    /** Returns what the pump adds, Pa, at a flow, m3/s, zero or more. */
    public double boostAt(double flowM3PerS) {
        double ratio = Require.notNegative(flowM3PerS, "flowM3PerS") / largestFlowM3PerS;
        return Require.result(shutOffPa * Math.max(0, 1 - ratio * ratio));
    }

    @Override
    public double pressureAt(double flowM3PerS) {
        return Require.result(supply.pressureAt(flowM3PerS) + boostAt(flowM3PerS));
    }

    @Override
    public double slopeAt(double flowM3PerS) {
        double ratio = Require.notNegative(flowM3PerS, "flowM3PerS") / largestFlowM3PerS;
        double boostSlope = ratio < 1 ? -2 * shutOffPa * ratio / largestFlowM3PerS : 0;
        return Require.result(supply.slopeAt(flowM3PerS) + boostSlope);
    }
}
