// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.Arrays;
import java.util.List;

/**
 * The conditions under which a heater is judged: every intake temperature with every voltage with every draw-off.
 *
 * @param intakes the winter design temperature first, then January to December
 * @param voltages voltages at the origin, V, lowest first; the survey's own one among them
 * @param nominal index of the survey's own voltage
 * @param drawOffs all taps shut first, then one open, then two
 */
public record Grid(List<Intake> intakes, double[] voltages, int nominal, List<DrawOffState> drawOffs) {
    public Grid {
        intakes = List.copyOf(intakes);
        voltages = voltages.clone();
        drawOffs = List.copyOf(drawOffs);
    }

    @Override
    public double[] voltages() {
        return voltages.clone();
    }

    /** Whether it has the same conditions as another. */
    public boolean same(Grid other) {
        return nominal == other.nominal
                && Arrays.equals(voltages, other.voltages)
                && intakes.equals(other.intakes)
                && drawOffs.equals(other.drawOffs);
    }

    /** How many voltages there are. */
    public int voltageCount() {
        return voltages.length;
    }

    /** One voltage, V. */
    public double voltage(int index) {
        return voltages[index];
    }

    /** Position of an intake and a voltage in an array over both, intake by intake. */
    public int index(int intake, int voltage) {
        return intake * voltages.length + voltage;
    }

    /** The condition at a point. */
    public Condition condition(int intake, int voltage, int drawOff) {
        return Condition.of(intakes.get(intake), voltages[voltage], drawOffs.get(drawOff));
    }
}
