// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.Table;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;

/** Intake temperatures by month that were published for a country, from the data file climates.csv. */
public final class Climates {
    /** Id of the climate whose months the mains-temperature model computes from the survey's air temperatures. */
    public static final String MODEL = "model";

    private static @Nullable Table table;

    /** Months by id: every draw of a house asks for them. */
    private static final Map<String, double[]> MONTHS = new ConcurrentHashMap<>();

    private Climates() {}

    private static synchronized Table table() {
        if (table == null) {
            table = Table.beside(Climates.class, "climates.csv", "climates");
        }
        return table;
    }

    /**
     * Intake temperature by month, degC, January first.
     *
     * @param id id of the climate, for example {@code uk-mains}
     */
    public static Optional<double[]> months(String id) {
        double[] known = MONTHS.get(id);
        if (known != null) {
            return Optional.of(known.clone());
        }
        Optional<double[]> read = read(id);
        read.ifPresent(months -> MONTHS.put(id, months.clone()));
        return read;
    }

    /** The same from the table, whether it was asked for before or not. */
    static Optional<double[]> read(String id) {
        return table().rows().stream()
                .filter(row -> id.equals(row.get("id")))
                .findFirst()
                .map(Climates::numbers);
    }

    private static double[] numbers(Map<String, String> row) {
        double[] result = new double[12];
        Arrays.setAll(result, month -> Table.number(row, String.valueOf(month + 1)));
        return result;
    }

    /** Id of the climate that is taken where a survey names none: water from a tank or a pump's tank stands in the house first. */
    public static String usual(@Nullable WaterFeed water) {
        boolean tank =
                water != null && (water.getSource() == WaterSource.TANK || water.getSource() == WaterSource.PUMPED);
        return tank ? "uk-tank" : "uk-mains";
    }

    /** The ids, in order. */
    public static java.util.List<String> ids() {
        return table().rows().stream().map(row -> row.getOrDefault("id", "")).toList();
    }

    /** Where the values come from. */
    public static String source() {
        return table().source();
    }
}
