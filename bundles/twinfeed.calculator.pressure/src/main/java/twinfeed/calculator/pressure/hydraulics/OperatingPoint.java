// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

/**
 * The flow through the unit in one condition of the grid.
 *
 * @param intake index of the intake
 * @param voltage index of the voltage
 * @param open how many taps are open
 * @param flowM3PerS flow through the unit, volume at its inlet, m3/s
 * @param limited whether the feed cannot give the target flow
 */
public record OperatingPoint(int intake, int voltage, int open, double flowM3PerS, boolean limited) {}
