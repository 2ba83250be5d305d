// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.repair;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.Table;
import twinfeed.diagnosis.data.DataRefusal;
import twinfeed.units.Concentration;

/**
 * How often units fail, by age and hardness of the water: assumptions in a data file. A unit's yearly rate of failures doubles
 * after each span of years; renewing one part does not make the others younger.
 */
public final class LifeModel {
    /** System property that names a file of assumptions to be used instead of the program's own. */
    static final String FILE = "twinfeed.life";

    private static final double MG_PER_L = 1000;

    /** So that a hardness on the edge of a band, as typed, falls into the lower one. */
    private static final double EDGE = 1e-6;

    /** Read once: a list of dwellings asks for it for each of them. */
    private static final LifeModel OWN = readOwn();

    private final Map<String, Double> values = new LinkedHashMap<>();

    private LifeModel(Table table) {
        for (Map<String, String> row : table.rows()) {
            String key = row.getOrDefault("key", "");
            values.put(key, Table.number(row, "value"));
        }
    }

    /** The assumptions in force: the file that the system property {@link #FILE} names, or the program's own. */
    public static LifeModel current() {
        String file = System.getProperty(FILE, "");
        if (file.isEmpty()) {
            return own();
        }
        try (InputStream stream = Files.newInputStream(Path.of(file))) {
            return read(stream);
        } catch (IOException unreadable) {
            throw DataRefusal.of(unreadable, "life.unreadable", file);
        }
    }

    static LifeModel own() {
        return OWN;
    }

    private static LifeModel readOwn() {
        return new LifeModel(Table.beside(LifeModel.class, "life.csv", "life"));
    }

    static LifeModel read(InputStream stream) {
        return new LifeModel(Table.read("life", stream));
    }

    double value(String key) {
        Double value = values.get(key);
        if (value == null) {
            throw DataRefusal.of(null, "life.missing", key);
        }
        return value;
    }

    int years() {
        return (int) Math.round(value("horizon"));
    }

    int age(@Nullable Integer known) {
        return known == null ? (int) Math.round(value("usualAge")) : known;
    }

    /** Key of the class of a hardness, by the bands of the Drinking Water Inspectorate (read); unset counts as the middle. */
    String hardnessClass(@Nullable Concentration hardness) {
        if (hardness == null) {
            return "hardness.moderate";
        }
        double mgPerL = hardness.si() * MG_PER_L - EDGE;
        if (mgPerL <= 100) {
            return "hardness.soft";
        }
        if (mgPerL <= 150) {
            return "hardness.slight";
        }
        if (mgPerL <= 200) {
            return "hardness.moderate";
        }
        return mgPerL <= 300 ? "hardness.hard" : "hardness.very";
    }

    /**
     * Expected number of failures over the horizon.
     *
     * @param ageYears age at its begin, whole years, 0 or more
     * @param hardnessClass key of the class
     */
    double failures(int ageYears, String hardnessClass) {
        double sum = 0;
        for (int year = 0; year < years(); year++) {
            double rate = value("newRate") * Math.pow(2, (ageYears + year) / value("doubling")) * value(hardnessClass);
            sum += Math.min(rate, value("mostRate"));
        }
        return sum;
    }
}
