// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import twinfeed.calculator.rules.Table;
import twinfeed.model.survey.PipeMaterial;

/** Loss coefficients, bores, roughness and design flows from the data files beside this class, read once. */
public final class PipeTables {
    private static final double MM = 1e-3;

    private static final Pattern UNIT = Pattern.compile("(\\d)\\s*(mm|in)$");

    private static final Map<String, Double> FITTINGS = map("fittings.csv", row -> row.getOrDefault("kind", ""), "k");
    private static final Map<String, Double> BORES =
            map("bores.csv", row -> row.get("material") + " " + row.get("size"), "bore");
    private static final Map<String, Double> ROUGHNESS =
            map("materials.csv", row -> row.getOrDefault("material", ""), "roughness");
    private static final List<Map<String, String>> DRAW_OFFS =
            table("draw-offs.csv").rows();

    private PipeTables() {}

    private static Map<String, Double> map(String file, Function<Map<String, String>, String> key, String column) {
        Map<String, Double> values = new LinkedHashMap<>();
        table(file).rows().forEach(row -> values.put(key.apply(row), Table.number(row, column)));
        return values;
    }

    public static Table table(String file) {
        return Table.beside(PipeTables.class, file, file);
    }

    /** Loss coefficient of one fitting of a kind, referred to the bore of its pipe. */
    static Optional<Double> k(String kind) {
        return Optional.ofNullable(FITTINGS.get(kind));
    }

    /** Bore, m, of a nominal size such as {@code 15 mm}. */
    public static Optional<Double> boreM(PipeMaterial material, String size) {
        Double mm = BORES.get(material.getLiteral() + " " + size);
        if (mm == null) {
            String spaced = UNIT.matcher(size.strip()).replaceAll("$1 $2");
            mm = BORES.get(material.getLiteral() + " " + spaced);
        }
        return Optional.ofNullable(mm).map(each -> each * MM);
    }

    /** Usual wall roughness, m. */
    public static double roughnessM(PipeMaterial material) {
        Double mm = ROUGHNESS.get(material.getLiteral());
        if (mm == null) {
            throw new IllegalStateException("materials.csv lacks " + material.getLiteral());
        }
        return mm * MM;
    }

    /** Design flow, m3/s, of a draw-off by what its name says, otherwise of a kitchen sink. */
    static double designFlowM3PerS(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return DRAW_OFFS.stream()
                .filter(row -> lower.contains(row.getOrDefault("words", "")))
                .findFirst()
                .map(row -> Table.number(row, "flow") / 1000)
                .orElseThrow(() -> new IllegalStateException("draw-offs.csv lacks the row for all others"));
    }
}
