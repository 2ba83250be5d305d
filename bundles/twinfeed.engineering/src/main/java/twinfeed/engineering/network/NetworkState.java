// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import java.util.List;
import twinfeed.engineering.numeric.Require;

/**
 * Flows and pressures of a {@link Network} in one condition.
 *
 * @param unitFlowM3PerS flow through the unit, m3/s
 * @param tapFlowsM3PerS flow of each open tap, m3/s, in the network's order
 * @param otherDrawOffM3PerS imposed draw-off at the tee, m3/s
 * @param teePressurePa pressure at the tee, Pa; below zero the supply cannot give these flows
 * @param unitInletPressurePa pressure at the unit's inlet, Pa; below zero the supply cannot give these flows
 */
public record NetworkState(
        double unitFlowM3PerS,
        List<Double> tapFlowsM3PerS,
        double otherDrawOffM3PerS,
        double teePressurePa,
        double unitInletPressurePa) {
    /** Copies the list and refuses what is not a number. */
    public NetworkState {
        tapFlowsM3PerS = List.copyOf(tapFlowsM3PerS);
        Require.result(unitFlowM3PerS);
        Require.result(teePressurePa);
        Require.result(unitInletPressurePa);
    }

    /** Returns the flow through the common pipe, m3/s. */
    public double totalFlowM3PerS() {
        double sum = unitFlowM3PerS + otherDrawOffM3PerS;
        for (double flow : tapFlowsM3PerS) {
            sum += flow;
        }
        return Require.result(sum);
    }
}
