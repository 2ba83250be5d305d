// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Intake;
import twinfeed.calculator.engine.OptionResult;

/**
 * Leaves of a grid the conditions that govern: those that some finding named for the readings as taken, with the coldest and the
 * warmest intake, and the lowest, the survey's own and the highest voltage. A margin's worst condition seldom moves when a reading moves within
 * its tolerance, and the extremes stand by for when it does; drawing only these takes a seventh of the time.
 */
final class GridFocus implements UnaryOperator<Grid> {
    private final Set<Integer> months = new TreeSet<>();
    private final Set<Double> voltages = new TreeSet<>();

    GridFocus(OptionResult nominal) {
        months.add(0);
        for (Finding finding : nominal.findings()) {
            Intake intake = finding.condition().intake();
            if (intake != null) {
                months.add(intake.month());
            }
            Double voltage = finding.condition().voltageV();
            if (voltage != null) {
                voltages.add(voltage);
            }
        }
    }

    @Override
    public Grid apply(Grid grid) {
        double coldest = extreme(grid, 1);
        double warmest = extreme(grid, -1);
        List<Intake> intakes = grid.intakes().stream()
                .filter(intake -> months.contains(intake.month())
                        || intake.temperatureC() == coldest
                        || intake.temperatureC() == warmest)
                .toList();
        double own = grid.voltage(grid.nominal());
        double[] kept = kept(grid);
        return new Grid(intakes, kept, Arrays.binarySearch(kept, own), grid.drawOffs());
    }

    private static double extreme(Grid grid, int sign) {
        return sign
                * grid.intakes().stream()
                        .mapToDouble(intake -> sign * intake.temperatureC())
                        .min()
                        .orElse(0);
    }

    private double[] kept(Grid grid) {
        List<Double> kept = new ArrayList<>();
        for (int i = 0; i < grid.voltageCount(); i++) {
            if (i == 0 || i == grid.nominal() || i == grid.voltageCount() - 1 || voltages.contains(grid.voltage(i))) {
                kept.add(grid.voltage(i));
            }
        }
        return kept.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
