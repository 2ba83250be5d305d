// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A scale whose ticks are numbers that people like: steps of 1, 2 or 5 times a power of ten.
 *
 * @param least value at its beginning
 * @param most value at its end
 * @param step distance of two ticks
 */
public record Scale(double least, double most, double step) {
    /**
     * The scale for values.
     *
     * @param from least value
     * @param to greatest value
     * @param ticks how many ticks there is room for, 2 or more
     */
    public static Scale of(double from, double to, int ticks) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        if (high - low < 1e-12) {
            high = low + Math.max(1, Math.abs(low) * 0.1);
        }
        double step = nice((high - low) / Math.max(1, ticks - 1));
        return new Scale(Math.floor(low / step + 1e-9) * step, Math.ceil(high / step - 1e-9) * step, step);
    }

    private static double nice(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double lead = rough / power;
        return (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10) * power;
    }

    /** Values of the ticks. */
    public List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        int count = (int) Math.round((most - least) / step);
        for (int i = 0; i <= count; i++) {
            ticks.add(BigDecimal.valueOf(least + i * step)
                    .setScale(decimals() + 1, RoundingMode.HALF_EVEN)
                    .doubleValue());
        }
        return ticks;
    }

    /** Decimals that tell two ticks apart. */
    public int decimals() {
        return Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    }

    /** Where a value stands between the beginning, 0, and the end, 1. */
    public double share(double value) {
        return (value - least) / (most - least);
    }
}
