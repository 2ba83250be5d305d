// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.Arrays;
import java.util.List;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.Heater;

/** Gives the shared quantities that the calculators under test take from others, with plausible values. */
public final class StandInCalculator implements Calculator {
    private final List<SharedQuantity> gives;

    /** Gives these quantities. */
    public StandInCalculator(List<SharedQuantity> gives) {
        this.gives = List.copyOf(gives);
    }

    @Override
    public CalculatorDescriptor descriptor() {
        return new CalculatorDescriptor(
                "stand-in", "1", Runner.TEXTS, gives, List.of(), List.of(), List.of(), List.of());
    }

    @Override
    public Assessor prepare(Context context) {
        return (candidate, shared, findings) ->
                gives.forEach(key -> shared.put(key, values(key, context.grid(), candidate.heater())));
    }

    private static double[] values(SharedQuantity key, Grid grid, Heater heater) {
        double powerW = heater.getPower() == null ? 9500 : heater.getPower().si();
        double ratedV = heater.getVoltage() == null ? 240 : heater.getVoltage().si();
        double[] values = new double[key.size(grid)];
        if (key.equals(SharedQuantity.TERMINAL_VOLTAGE)) {
            Arrays.setAll(values, i -> grid.voltage(i) * 0.98);
        } else if (key.equals(SharedQuantity.DELIVERED_POWER)) {
            Arrays.setAll(values, i -> power(powerW, ratedV, grid.voltage(i) * 0.98));
        } else if (key.equals(SharedQuantity.TARGET_FLOW)) {
            for (int intake = 0; intake < grid.intakes().size(); intake++) {
                for (int voltage = 0; voltage < grid.voltageCount(); voltage++) {
                    double riseK = 40 - grid.intakes().get(intake).temperatureC();
                    values[grid.index(intake, voltage)] =
                            power(powerW, ratedV, grid.voltage(voltage) * 0.98) / (4190 * riseK);
                }
            }
        } else if (key.equals(SharedQuantity.DESIGN_CURRENT)) {
            values[0] = powerW / ratedV;
        } else {
            Arrays.fill(values, 1);
        }
        return values;
    }

    private static double power(double ratedW, double ratedV, double actualV) {
        return ratedW * actualV * actualV / (ratedV * ratedV);
    }
}
