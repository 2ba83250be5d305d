// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The numbers and tables of one wiring standard in one edition. Immutable; read from the data files of its folder by
 * {@link RuleSets}, and kept as typed tables so that an assessment only looks values up.
 */
public final class RuleSet {
    /** Names of the tables that each rule set has, beside {@code numbers}. */
    static final List<String> TABLES = List.of(
            "cables",
            "capacity",
            "conductors",
            "methods",
            "ambient",
            "grouping",
            "insulation",
            "devices",
            "loop",
            "letthrough",
            "diversity",
            "bonding",
            "earthing",
            "tails");

    private final String id;
    private final Map<String, String> texts = new LinkedHashMap<>();
    private final Map<String, String> sources = new LinkedHashMap<>();
    private final Map<String, Double> numbers = new LinkedHashMap<>();
    private final List<Double> gridVoltages;
    private final Map<String, Table> tables;
    private final Cables cables;
    private final Map<String, Method> methods = new LinkedHashMap<>();
    private final LinearTable ambient;
    private final Map<String, StepTable> grouping = new LinkedHashMap<>();
    private final StepTable insulation;
    private final Devices devices;
    private final List<DiversityShare> diversity;
    private final Earthing earthing;

    RuleSet(String id, Table numbers, Map<String, Table> tables) {
        this.id = id;
        this.tables = new LinkedHashMap<>(tables);
        List<Double> voltages = List.of();
        for (TableRow row : numbers.typed()) {
            readNumber(row);
            if (row.word("key").equals("voltage.grid")) {
                voltages = row.numbers("value");
            }
        }
        this.gridVoltages = voltages;
        this.cables = new Cables(table("cables"), table("capacity"), table("conductors"));
        for (TableRow row : table("methods").typed()) {
            methods.put(row.word("key"), method(row));
        }
        this.ambient = LinearTable.of(table("ambient"), "temperature", "factor");
        this.insulation = StepTable.of(table("insulation"), "length", "factor");
        readGrouping(table("grouping"));
        this.devices = new Devices(table("devices"), table("loop"), table("letthrough"));
        this.diversity = DiversityShare.all(table("diversity"));
        this.earthing = new Earthing(table("tails"), table("bonding"), table("earthing"));
    }

    private void readNumber(TableRow row) {
        String key = row.word("key");
        String value = row.word("value");
        texts.put(key, value);
        sources.put(key, row.text("source"));
        try {
            numbers.put(key, Double.valueOf(value));
        } catch (NumberFormatException text) {
            numbers.remove(key);
        }
    }

    private static Method method(TableRow row) {
        Method.Move move =
                switch (row.word("move").toLowerCase(Locale.ROOT)) {
                    case "lift" -> Method.Move.LIFT;
                    case "clip" -> Method.Move.CLIP;
                    case "no" -> Method.Move.NO;
                    default -> throw row.wrong("move", "move.unknown");
                };
        return new Method(row.word("key"), row.word("title"), row.yes("insulated"), move, row.words("plausible"));
    }

    private void readGrouping(Table table) {
        Map<String, Map<Double, Double>> byLayout = new LinkedHashMap<>();
        for (TableRow row : table.typed()) {
            byLayout.computeIfAbsent(row.word("layout"), layout -> new LinkedHashMap<>())
                    .put(row.positive("circuits"), row.positive("factor"));
        }
        byLayout.forEach((layout, values) -> grouping.put(layout, new StepTable(values)));
    }

    /** Its id, as surveys name it. */
    public String id() {
        return id;
    }

    /** The keys of its numbers and texts, in order. */
    public List<String> keys() {
        return List.copyOf(texts.keySet());
    }

    /** Its name as printed, with the edition. */
    public String title() {
        return text("title");
    }

    /** What every output that uses it says about its currency. */
    public String caution() {
        return text("caution");
    }

    /**
     * A text of the rule set.
     *
     * @throws IllegalArgumentException if numbers.csv has no such key
     */
    public String text(String key) {
        String value = texts.get(key);
        if (value == null) {
            throw RuleRefusal.of("set.text", id, key);
        }
        return value;
    }

    /**
     * A number of the rule set, in SI or as its key says, for example {@code voltage.nominal}.
     *
     * @throws IllegalArgumentException if numbers.csv has no such number
     */
    public double number(String key) {
        Double value = numbers.get(key);
        if (value == null) {
            throw RuleRefusal.of("set.number", id, key);
        }
        return value;
    }

    /** Where a number comes from and how sure it is. */
    public String source(String key) {
        return sources.getOrDefault(key, "");
    }

    /** Where a table comes from and how sure its values are. */
    public String tableSource(String name) {
        return table(name).source() + "; " + table(name).status();
    }

    /** Voltages at the origin for which every heater is judged, V. */
    public List<Double> gridVoltages() {
        return gridVoltages;
    }

    /**
     * A table as it was read.
     *
     * @throws IllegalArgumentException if there is none of this name
     */
    public Table table(String name) {
        @Nullable Table table = tables.get(name);
        if (table == null) {
            throw RuleRefusal.of("set.table", id, name);
        }
        return table;
    }

    /** The cables with their tabulated values. */
    public Cables cables() {
        return cables;
    }

    /** A reference method of installation; empty where the rule set does not know it. */
    public Optional<Method> method(String key) {
        return Optional.ofNullable(methods.get(key));
    }

    /** The keys of all reference methods, in the order of the table. */
    public List<String> methods() {
        return List.copyOf(methods.keySet());
    }

    /** Factor Ca for an ambient temperature, degC; empty above the table. */
    public OptionalDouble ambientFactor(double ambientC) {
        return ambient.at(ambientC);
    }

    /**
     * Factor Cg for a number of circuits that run together.
     *
     * @param layout bunched or single-layer
     * @param circuits how many, this one included, 1 or more; beyond the table the answer is empty
     */
    public OptionalDouble groupingFactor(String layout, double circuits) {
        StepTable table = grouping.get(layout);
        return table == null ? OptionalDouble.empty() : table.at(circuits);
    }

    /** Factor Ci for a length, m, wholly surrounded by thermal insulation; 1 for none. */
    public double insulationFactor(double lengthM) {
        return lengthM <= 0 ? 1 : insulation.atOrLast(lengthM * 1000).orElse(1);
    }

    /** The protective devices. */
    public Devices devices() {
        return devices;
    }

    /** Diversity, one entry for each kind of load. */
    public List<DiversityShare> diversity() {
        return diversity;
    }

    /** Tails, earthing conductor and main bonding. */
    public Earthing earthing() {
        return earthing;
    }

    /** Largest disconnection time, s, of the rules for a fixed unit behind a device of a rating, A. */
    public double disconnectionS(double ratingA, boolean ownElectrode) {
        String size = ratingA <= number("disconnection.rating") ? "small" : "large";
        return number("disconnection." + size + (ownElectrode ? ".tt" : ".tn"));
    }
}
