// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.survey.SurveyPackage;

/** The table of ranges, {@code ranges.csv}: what a value can be, and what it usually is. */
final class Ranges {
    private static final int COLUMNS = 6;

    private final Map<EStructuralFeature, Entry> entries = new HashMap<>();

    private Ranges() {
        try (InputStream stream = Objects.requireNonNull(Ranges.class.getResourceAsStream("ranges.csv"));
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(this::add);
        } catch (IOException e) {
            throw new UncheckedIOException("ranges.csv", e);
        }
    }

    static Ranges table() {
        return Holder.TABLE;
    }

    @Nullable
    Entry of(EStructuralFeature feature) {
        return entries.get(feature);
    }

    private void add(String line) {
        String[] cells = line.split(",", -1);
        if (cells.length != COLUMNS) {
            throw new IllegalArgumentException("ranges.csv: " + COLUMNS + " cells wanted: " + line);
        }
        EStructuralFeature feature = feature(cells[0].strip(), cells[1].strip());
        EDataType type = (EDataType) feature.getEType();
        Range possible = range(type, cells[2].strip(), cells[3].strip());
        boolean unusualIsPossible = cells[4].isBlank() && cells[5].isBlank();
        Range usual = unusualIsPossible ? possible : range(type, cells[4].strip(), cells[5].strip());
        if (entries.put(feature, new Entry(possible, usual)) != null) {
            throw new IllegalArgumentException("ranges.csv: twice: " + line);
        }
    }

    private static EStructuralFeature feature(String className, String name) {
        for (EPackage pack : new EPackage[] {SurveyPackage.eINSTANCE, CataloguePackage.eINSTANCE}) {
            if (pack.getEClassifier(className) instanceof org.eclipse.emf.ecore.EClass type
                    && type.getEStructuralFeature(name) != null) {
                return type.getEStructuralFeature(name);
            }
        }
        throw new IllegalArgumentException("ranges.csv: there is no " + className + "." + name);
    }

    private static Range range(EDataType type, String least, String most) {
        boolean open = least.startsWith(">");
        String from = open ? least.substring(1).strip() : least;
        double low = from.isEmpty() ? Double.NEGATIVE_INFINITY : number(type, from);
        double high = most.isEmpty() ? Double.POSITIVE_INFINITY : number(type, most);
        return new Range(low, open, high, words(open, from, most));
    }

    private static double number(EDataType type, String text) {
        Object value = type.getEPackage().getEFactoryInstance().createFromString(type, text);
        return Range.number(value).orElseThrow();
    }

    private static String words(boolean open, String from, String most) {
        if (from.isEmpty()) {
            return Problems.text("span.most", most);
        }
        if (most.isEmpty()) {
            return Problems.text(open ? "span.above" : "span.least", from);
        }
        return Problems.text(open ? "span.open" : "span.closed", from, most);
    }

    /**
     * One line of the table.
     *
     * @param possible outside is an error
     * @param usual outside is a warning
     */
    record Entry(Range possible, Range usual) {}

    /** Read at the first check only. */
    private static final class Holder {
        static final Ranges TABLE = new Ranges();
    }
}
