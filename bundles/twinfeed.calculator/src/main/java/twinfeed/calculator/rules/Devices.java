// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/** The protective devices of a rule set, with what is tabulated for them. */
public final class Devices {
    private final Map<String, DeviceKind> kinds = new LinkedHashMap<>();
    private final Map<String, Map<Double, StepTable>> loops = new LinkedHashMap<>();
    private final Map<String, Map<Double, Map<Double, Double>>> loopTimes = new LinkedHashMap<>();
    private final Map<String, StepTable> letThrough = new LinkedHashMap<>();

    Devices(Table devices, Table loop, Table energy) {
        for (TableRow row : devices.typed()) {
            kinds.put(row.word("key"), kind(row));
        }
        readLoops(loop);
        Map<String, Map<Double, Double>> byKind = new LinkedHashMap<>();
        for (TableRow row : energy.typed()) {
            byKind.computeIfAbsent(row.word("kind"), kind -> new LinkedHashMap<>())
                    .put(row.positive("rating"), row.positive("energy"));
        }
        byKind.forEach((kind, values) -> letThrough.put(kind, new StepTable(values)));
    }

    private static DeviceKind kind(TableRow row) {
        double multiple = row.positive("multiple", 0);
        double factor = row.positive("factor");
        if (factor > 1) {
            throw row.wrong("factor", "factor.above", row.text("factor"));
        }
        return new DeviceKind(
                row.word("key"),
                row.word("title"),
                family(row),
                multiple > 0 ? OptionalDouble.of(multiple) : OptionalDouble.empty(),
                factor,
                row.numbers("ratings"));
    }

    private static DeviceKind.Family family(TableRow row) {
        return switch (row.word("family").toLowerCase(Locale.ROOT)) {
            case "breaker" -> DeviceKind.Family.BREAKER;
            case "rcbo" -> DeviceKind.Family.RCBO;
            case "fuse" -> DeviceKind.Family.FUSE;
            default -> throw row.wrong("family", "family.unknown");
        };
    }

    private void readLoops(Table loop) {
        Map<String, Map<Double, Map<Double, Double>>> all = new LinkedHashMap<>();
        for (TableRow row : loop.typed()) {
            all.computeIfAbsent(row.word("kind"), kind -> new LinkedHashMap<>())
                    .computeIfAbsent(row.positive("rating"), rating -> new LinkedHashMap<>())
                    .put(row.positive("time"), row.positive("impedance"));
        }
        loopTimes.putAll(all);
        all.forEach((kind, ratings) -> ratings.forEach((rating, times) ->
                loops.computeIfAbsent(kind, each -> new LinkedHashMap<>()).put(rating, new StepTable(times))));
    }

    /** A kind of device; empty where the rule set does not know it. */
    public Optional<DeviceKind> find(String key) {
        return Optional.ofNullable(kinds.get(key));
    }

    /** The keys of all kinds, in the order of the table. */
    public List<String> keys() {
        return List.copyOf(kinds.keySet());
    }

    /** Largest loop impedance, ohm, that is tabulated for a fuse of exactly this rating, A, and a time, s. */
    public OptionalDouble tabulatedLoopOhm(String kind, double ratingA, double timeS) {
        StepTable times = loops.getOrDefault(kind, Map.of()).get(ratingA);
        return times == null ? OptionalDouble.empty() : times.at(timeS);
    }

    /** Largest loop impedances, ohm, by time, s, that are tabulated for a fuse of exactly this rating, A; empty where there are none. */
    public SortedMap<Double, Double> tabulatedLoopsOhm(String kind, double ratingA) {
        return new TreeMap<>(loopTimes.getOrDefault(kind, Map.of()).getOrDefault(ratingA, Map.of()));
    }

    /** Largest energy, A2s, that a usual new device of a kind and rating, A, lets through; empty where it is not known. */
    public OptionalDouble letThroughA2s(String kind, double ratingA) {
        StepTable energies = letThrough.get(kind);
        return energies == null ? OptionalDouble.empty() : energies.at(ratingA);
    }
}
