// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The rule sets that are there. Each is a folder of data files whose {@code numbers.csv} holds title, caution and single
 * numbers; adding one needs its folder and a line in {@code index.csv}, and no code.
 */
public final class RuleSets {
    /** Id of the rule set that is used where a survey names none. */
    public static final String DEFAULT = "bs7671-2018-a2";

    private static final List<String> TABLES = List.of(
            "cables", "capacity", "methods", "ambient", "grouping", "insulation", "devices", "loop", "diversity");

    private static final Map<String, RuleSet> LOADED = new ConcurrentHashMap<>();

    private RuleSets() {}

    /** The ids, in the order of the index. */
    public static List<String> ids() {
        return read("index", "index.csv").rows().stream()
                .map(row -> row.getOrDefault("id", ""))
                .toList();
    }

    /** A rule set, or empty if there is none of that id. */
    public static Optional<RuleSet> find(String id) {
        return ids().contains(id) ? Optional.of(LOADED.computeIfAbsent(id, RuleSets::load)) : Optional.empty();
    }

    private static RuleSet load(String id) {
        Map<String, Table> tables = new LinkedHashMap<>();
        TABLES.forEach(name -> tables.put(name, read(name, id + "/" + name + ".csv")));
        return new RuleSet(id, read("numbers", id + "/numbers.csv"), tables);
    }

    private static Table read(String name, String file) {
        InputStream stream = RuleSets.class.getResourceAsStream(file);
        if (stream == null) {
            throw new IllegalStateException("rule data " + file + " is missing");
        }
        return Table.read(name, stream);
    }
}
