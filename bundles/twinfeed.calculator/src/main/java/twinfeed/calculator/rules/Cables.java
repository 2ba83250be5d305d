// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** The cables of a rule set by key and size, and the resistance of conductors by cross-section. */
public final class Cables {
    private final Map<String, NavigableMap<Long, CableSize>> sizes = new LinkedHashMap<>();
    private final Map<Long, Double> ohmPerM = new LinkedHashMap<>();

    Cables(Table cables, Table capacity, Table conductors) {
        for (TableRow row : conductors.typed()) {
            ohmPerM.put(key(row.positive("size")), row.positive("resistance") / 1000);
        }
        Map<String, Map<Long, Map<String, Double>>> currents = currents(capacity);
        for (TableRow row : cables.typed()) {
            CableSize size = size(row, currents);
            if (sizes.computeIfAbsent(size.cable(), cable -> new TreeMap<>()).putIfAbsent(key(size.sizeMm2()), size)
                    != null) {
                throw row.wrong("size", "size.twice", size.cable());
            }
        }
        if (sizes.isEmpty()) {
            throw RuleRefusal.of("cables.none");
        }
    }

    private static Map<String, Map<Long, Map<String, Double>>> currents(Table capacity) {
        Map<String, Map<Long, Map<String, Double>>> currents = new LinkedHashMap<>();
        for (TableRow row : capacity.typed()) {
            Double before = currents.computeIfAbsent(row.word("cable"), cable -> new LinkedHashMap<>())
                    .computeIfAbsent(key(row.positive("size")), size -> new LinkedHashMap<>())
                    .putIfAbsent(row.word("method"), row.positive("current"));
            if (before != null) {
                throw row.wrong("current", "current.twice");
            }
        }
        return currents;
    }

    private CableSize size(TableRow row, Map<String, Map<Long, Map<String, Double>>> currents) {
        String cable = row.word("cable");
        double sizeMm2 = row.positive("size");
        return new CableSize(
                cable,
                row.word("title"),
                sizeMm2,
                row.positive("drop") / 1000,
                row.positive("cpc"),
                conductorOhmPerM(sizeMm2).orElseThrow(() -> row.wrong("size", "size.resistance")),
                currents.getOrDefault(cable, Map.of()).getOrDefault(key(sizeMm2), Map.of()));
    }

    /** Sizes as keys, in thousandths of a square millimetre: what was typed in other units meets the table all the same. */
    private static long key(double mm2) {
        return Math.round(mm2 * 1000);
    }

    /** The keys of the cables, in the order of the table; the first is taken where a survey names none. */
    public List<String> keys() {
        return List.copyOf(sizes.keySet());
    }

    /** The cable that is taken where a survey names none. */
    public String first() {
        return sizes.keySet().iterator().next();
    }

    /** A size of a cable; empty where the table has none. */
    public Optional<CableSize> find(String cable, double sizeMm2) {
        NavigableMap<Long, CableSize> known = sizes.get(cable);
        return known == null ? Optional.empty() : Optional.ofNullable(known.get(key(sizeMm2)));
    }

    /** All sizes of a cable, smallest first; empty for an unknown cable. */
    public List<CableSize> sizes(String cable) {
        NavigableMap<Long, CableSize> known = sizes.get(cable);
        return known == null ? List.of() : List.copyOf(known.values());
    }

    /** Resistance of a conductor at 20 degC, ohm/m; empty where the table has no such cross-section. */
    public OptionalDouble conductorOhmPerM(double sizeMm2) {
        Double found = ohmPerM.get(key(sizeMm2));
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found);
    }
}
