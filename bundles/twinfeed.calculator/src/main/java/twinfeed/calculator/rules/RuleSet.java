// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The numbers and tables of one wiring standard in one edition. Immutable; read from the data files of its folder by
 * {@link RuleSets}.
 */
public final class RuleSet {
    private final String id;
    private final Map<String, String> numbers;
    private final Map<String, String> sources;
    private final Map<String, Table> tables;

    RuleSet(String id, Table numbers, Map<String, Table> tables) {
        this.id = id;
        this.numbers = new LinkedHashMap<>();
        this.sources = new LinkedHashMap<>();
        numbers.rows().forEach(row -> {
            String key = row.getOrDefault("key", "");
            this.numbers.put(key, row.getOrDefault("value", ""));
            this.sources.put(key, row.getOrDefault("source", ""));
        });
        this.tables = Map.copyOf(tables);
    }

    /** Its id, as surveys name it. */
    public String id() {
        return id;
    }

    /** Its name as printed, with the edition. */
    public String title() {
        return text("title");
    }

    /** What every output that uses it says about its currency. */
    public String caution() {
        return text("caution");
    }

    /** A text of the rule set. */
    public String text(String key) {
        String value = numbers.get(key);
        if (value == null) {
            throw new IllegalArgumentException("rule set " + id + " has no " + key);
        }
        return value;
    }

    /** A number of the rule set, in SI, for example {@code voltage.nominal}. */
    public double number(String key) {
        return Double.parseDouble(text(key));
    }

    /** Where a number comes from and how sure it is. */
    public String source(String key) {
        return sources.getOrDefault(key, "");
    }

    /** Voltages at the origin for which every heater is judged, V. */
    public List<Double> gridVoltages() {
        return List.of(text("voltage.grid").split(" ")).stream()
                .map(Double::valueOf)
                .toList();
    }

    /** A table. */
    public Table table(String name) {
        @Nullable Table table = tables.get(name);
        if (table == null) {
            throw new IllegalArgumentException("rule set " + id + " has no table " + name);
        }
        return table;
    }
}
