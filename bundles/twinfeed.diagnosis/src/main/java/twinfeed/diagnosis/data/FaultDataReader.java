// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.data;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.Table;

/** Reads the data file of the fault-finding; what is wrong is named with row and column. */
final class FaultDataReader {
    private static final String POWERED = "powered";
    private static final String AFTER = "after:";

    private final String name;
    private final Map<String, FaultPart> parts = new LinkedHashMap<>();
    private final Map<String, Observation> observations = new LinkedHashMap<>();
    private final Map<String, Map<String, Double>> likelihoods = new LinkedHashMap<>();
    private final Map<String, Map<String, Double>> first = new LinkedHashMap<>();
    private final Map<String, Double> limits = new LinkedHashMap<>();
    private int number;

    private FaultDataReader(String name) {
        this.name = name;
    }

    static FaultData read(String name, InputStream stream) {
        Table table = Table.read(name, stream);
        FaultDataReader rows = new FaultDataReader(name);
        table.rows().forEach(rows::add);
        rows.whole();
        Map<String, Observation> joined = new LinkedHashMap<>();
        rows.observations.forEach(
                (key, each) -> joined.put(key, each.withLikelihoods(rows.likelihoods.getOrDefault(key, Map.of()))));
        return new FaultData(table.source(), table.status(), rows.parts, joined, rows.ordered(), rows.limits);
    }

    private void add(Map<String, String> row) {
        number++;
        String kind = word(row, "row");
        String key = word(row, "key");
        if (word(row, "reason").isEmpty()) {
            throw wrong("reason", "reason.empty");
        }
        switch (kind) {
            case "part" -> part(key, row);
            case "observation" -> observation(key, row);
            case "likelihood" -> likelihood(key, row);
            case "first" -> first(key, row);
            case "limit" -> once(limits.put(key, positive(row)), key);
            default -> throw wrong("row", "row.kind", kind);
        }
    }

    private void part(String key, Map<String, String> row) {
        List<String> codes = new ArrayList<>(List.of(word(row, "code").split(" +")));
        codes.removeIf(code -> code.equals("-") || code.isEmpty());
        once(parts.put(key, new FaultPart(key, positive(row), codes, word(row, "reason"))), key);
    }

    private void observation(String key, Map<String, String> row) {
        double minutes = number(row, "minutes");
        if (minutes < 0) {
            throw wrong("minutes", "minutes.negative", minutes);
        }
        once(
                observations.put(
                        key,
                        new Observation(
                                key,
                                place(row),
                                after(row),
                                powered(row),
                                minutes,
                                chance(row),
                                word(row, "reason"),
                                Map.of())),
                key);
    }

    /** An observation names no part; the column says whether the unit has to run for it, and after which others it is asked. */
    private boolean powered(Map<String, String> row) {
        return conditions(row).contains(POWERED);
    }

    private Set<String> after(Map<String, String> row) {
        Set<String> after = new LinkedHashSet<>();
        for (String each : conditions(row)) {
            if (each.startsWith(AFTER)) {
                after.addAll(List.of(each.substring(AFTER.length()).split("\\|")));
            }
        }
        return after;
    }

    private List<String> conditions(Map<String, String> row) {
        String text = word(row, "part");
        List<String> all = text.isEmpty() ? List.of() : List.of(text.split(" +"));
        for (String each : all) {
            if (!each.equals(POWERED) && !(each.startsWith(AFTER) && each.length() > AFTER.length())) {
                throw wrong("part", "condition.unknown", each);
            }
        }
        return all;
    }

    /** Observations that are named by others may stand below them, so they are looked for when all rows are read. */
    private void first(String key, Map<String, String> row) {
        String asked = word(row, "part");
        once(first.computeIfAbsent(key, each -> new LinkedHashMap<>()).put(asked, positive(row)), asked);
    }

    private Map<String, List<String>> ordered() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        first.forEach((key, asked) -> all.put(
                key,
                asked.entrySet().stream()
                        .sorted(Map.Entry.comparingByValue())
                        .map(Map.Entry::getKey)
                        .toList()));
        return all;
    }

    private ObservationStage place(Map<String, String> row) {
        String text = word(row, "place");
        for (ObservationStage place : ObservationStage.values()) {
            if (place.name().toLowerCase(Locale.ROOT).equals(text)) {
                return place;
            }
        }
        throw wrong("place", "place.unknown", text);
    }

    private void likelihood(String key, Map<String, String> row) {
        String part = word(row, "part");
        if (!observations.containsKey(key)) {
            throw wrong("key", "observation.above", key);
        }
        if (!parts.containsKey(part)) {
            throw wrong("part", "part.above", part);
        }
        once(likelihoods.computeIfAbsent(key, each -> new LinkedHashMap<>()).put(part, chance(row)), part);
    }

    /** A chance strictly between 0 and 1: no answer proves anything for good, and none is impossible. */
    private double chance(Map<String, String> row) {
        double value = number(row, "value");
        if (!(value > 0 && value < 1)) {
            throw wrong("value", "chance.none", value);
        }
        return value;
    }

    private double positive(Map<String, String> row) {
        double value = number(row, "value");
        if (!(value > 0)) {
            throw wrong("value", "number.positive", value);
        }
        return value;
    }

    private double number(Map<String, String> row, String column) {
        String text = word(row, column);
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException notANumber) {
            throw wrong(notANumber, column, "number.none", text);
        }
        throw wrong(column, "number.infinite", text);
    }

    private void once(@Nullable Object before, String key) {
        if (before != null) {
            throw wrong("key", "key.twice", key);
        }
    }

    private void whole() {
        for (String part : List.of(FaultData.SUPPLY, FaultData.NONE)) {
            if (!parts.containsKey(part)) {
                throw wrong("key", "part.missing", part);
            }
        }
        observations.values().forEach(each -> each.after().forEach(key -> known(key, "observation.after", each.key())));
        first.forEach((key, asked) -> {
            known(key, "observation.first", "");
            asked.keySet().forEach(each -> known(each, "observation.next", key));
        });
    }

    private void known(String key, String message, String other) {
        if (!observations.containsKey(key)) {
            throw wrong("part", message, key, other);
        }
    }

    private static String word(Map<String, String> row, String column) {
        return row.getOrDefault(column, "");
    }

    private IllegalArgumentException wrong(String column, String key, Object... arguments) {
        return wrong(null, column, key, arguments);
    }

    private IllegalArgumentException wrong(@Nullable Throwable cause, String column, String key, Object... arguments) {
        return DataRefusal.of(cause, "row", name, number, column, DataRefusal.text(key, arguments));
    }
}
