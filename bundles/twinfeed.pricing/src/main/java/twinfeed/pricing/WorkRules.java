// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** What a job always needs, and the section in which a code is printed: data files beside this class. */
final class WorkRules {
    private record Standard(String code, long quantity, String when) {}

    private record Place(String pattern, Section section) {}

    private record Needless(String work, String needless) {}

    private record Companion(String work, String brings, String quantity) {}

    private static final List<Standard> STANDARD = rows("standard-work.csv").stream()
            .map(row -> new Standard(row.get("code"), Long.parseLong(row.get("quantity")), row.get("when")))
            .toList();
    private static final List<Place> PLACES = rows("sections.csv").stream()
            .map(row -> new Place(row.get("pattern"), Section.of(row.get("section"))))
            .toList();

    private static final List<Needless> NEEDLESS = rows("needless-work.csv").stream()
            .map(row -> new Needless(row.get("work"), row.get("needless")))
            .toList();
    private static final List<Companion> COMPANIONS = rows("companions.csv").stream()
            .map(row -> new Companion(row.get("work"), row.get("brings"), row.get("quantity")))
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

    private static boolean applies(String when, boolean replacement, Collection<String> asked) {
        return switch (when) {
            case "always" -> true;
            case "replacement" -> replacement;
            default -> {
                List<String> patterns = List.of(when.split("[|]"));
                yield asked.stream().anyMatch(code -> patterns.stream().anyMatch(one -> matches(one, code)));
            }
        };
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

    private static List<CSVRecord> rows(String file) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .build();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(WorkRules.class.getResourceAsStream(file), file), StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file, unreadable);
        }
    }
}
