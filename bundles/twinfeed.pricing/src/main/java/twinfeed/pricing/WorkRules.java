// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import twinfeed.model.rows.CsvRows;
import twinfeed.pricing.texts.StandingTexts.Kind;

/** What a job always needs, and the section in which a code is printed: data files beside this class. */
final class WorkRules {
    private record Standard(String code, long quantity, String when) {}

    private record Place(String pattern, Section section) {}

    private record Needless(String work, String needless) {}

    private record Text(String work, String text) {}

    private record Companion(String work, String brings, String quantity) {}

    private static final int MOST_ROWS = 1000;

    /** How the codes of parts of a unit begin. */
    private static final String PART = "part-";

    private static final List<Standard> STANDARD = rows("standard-work.csv").stream()
            .map(row -> new Standard(text(row, "code"), Long.parseLong(text(row, "quantity")), text(row, "when")))
            .toList();
    private static final List<Place> PLACES = rows("sections.csv").stream()
            .map(row -> new Place(text(row, "pattern"), Section.of(text(row, "section"))))
            .toList();

    private static final List<Needless> NEEDLESS = rows("needless-work.csv").stream()
            .map(row -> new Needless(text(row, "work"), text(row, "needless")))
            .toList();
    private static final List<Companion> COMPANIONS = rows("companions.csv").stream()
            .map(row -> new Companion(text(row, "work"), text(row, "brings"), text(row, "quantity")))
            .toList();
    private static final List<Text> TEXTS = rows("work-texts.csv").stream()
            .map(row -> new Text(text(row, "work"), text(row, "text")))
            .toList();

    private WorkRules() {}

    /**
     * What the job needs besides its heater and remedies.
     *
     * @param replacement whether a heater is put in
     * @param asked codes that heater, remedies and extras ask for
     */
    static List<RequiredItem> standard(boolean replacement, Collection<String> asked) {
        List<RequiredItem> needs = new ArrayList<>();
        for (Standard one : STANDARD) {
            if (applies(one.when, replacement, asked)) {
                needs.add(RequiredItem.of(one.code, one.quantity));
            }
        }
        return needs;
    }

    /** Codes of all that {@link #standard} may answer. */
    static List<String> standardCodes() {
        return STANDARD.stream().map(Standard::code).toList();
    }

    private static boolean applies(String when, boolean replacement, Collection<String> asked) {
        return switch (when) {
            case "always" -> true;
            case "replacement" -> replacement;
            case "circuit" -> !insideUnit(asked);
            default -> {
                List<String> patterns = List.of(when.split("[|]"));
                yield asked.stream().anyMatch(code -> patterns.stream().anyMatch(one -> matches(one, code)));
            }
        };
    }

    /** Whether a job is a visit that renews parts inside the unit and leaves the circuit as it is. */
    private static boolean insideUnit(Collection<String> asked) {
        return asked.contains(FaultReport.Repair.VISIT)
                && asked.stream().allMatch(code -> code.equals(FaultReport.Repair.VISIT) || code.startsWith(PART));
    }

    /** Whether other work of the job makes a code needless. */
    static boolean needless(String code, Collection<String> asked) {
        return NEEDLESS.stream()
                .anyMatch(rule -> matches(rule.needless, code)
                        && asked.stream().anyMatch(other -> !other.equals(code) && matches(rule.work, other)));
    }

    /** What so much of a code brings with it. */
    static List<RequiredItem> companions(String code, BigDecimal quantity) {
        return COMPANIONS.stream()
                .filter(rule -> matches(rule.work, code) && quantity.signum() > 0)
                .map(rule -> new RequiredItem(
                        rule.brings, rule.quantity.equals("same") ? quantity : new BigDecimal(rule.quantity)))
                .toList();
    }

    /** Keys of the standing texts that the codes of a job call for. */
    static List<String> texts(Collection<String> codes, Kind kind) {
        return TEXTS.stream()
                .filter(rule -> rule.text.startsWith(kind.name().toLowerCase(Locale.ROOT) + "."))
                .filter(rule -> codes.stream().anyMatch(code -> matches(rule.work, code)))
                .map(Text::text)
                .toList();
    }

    /** The section of a code that is not the heater's. */
    static Section section(String code) {
        return PLACES.stream()
                .filter(place -> matches(place.pattern, code))
                .findFirst()
                .map(Place::section)
                .orElse(Section.REMEDIAL);
    }

    private static boolean matches(String pattern, String code) {
        return pattern.endsWith("*")
                ? code.startsWith(pattern.substring(0, pattern.length() - 1))
                : code.equals(pattern);
    }

    private static String text(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    private static List<Map<String, String>> rows(String file) {
        List<Map<String, String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>();
        try (InputStream stream = Objects.requireNonNull(WorkRules.class.getResourceAsStream(file), file)) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            CsvRows.read(file, text, MOST_ROWS, row -> {
                if (head.isEmpty() && !row.head()) {
                    head.addAll(row.cells());
                } else if (!row.head()) {
                    Map<String, String> cells = new HashMap<>();
                    for (int i = 0; i < head.size(); i++) {
                        cells.put(head.get(i), row.cells().get(i));
                    }
                    rows.add(cells);
                }
            });
            return rows;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file, unreadable);
        }
    }
}
