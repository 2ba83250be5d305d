// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;

/**
 * Two revisions of a quote line by line.
 *
 * @param differences what differs: the head, then option by option, section by section, then the words; empty if nothing does
 */
public record QuoteComparison(List<Difference> differences) {
    /** How the two differ in one place. */
    public enum Kind {
        /** Only the later one has it. */
        ADDED,
        /** Only the earlier one has it. */
        REMOVED,
        /** Both have it with different values. */
        CHANGED
    }

    /**
     * One difference.
     *
     * @param kind how they differ
     * @param option name of the option; empty for the head and the words
     * @param section key of the section; empty outside sections
     * @param code code of the line, or name of a list of words; empty for option and head
     * @param field the value that differs; empty where a whole line, option or sentence was added or removed
     * @param before in the earlier one; empty if it is not there
     * @param after in the later one; empty if it is not there
     */
    public record Difference(
            Kind kind, String option, String section, String code, String field, String before, String after) {}

    public QuoteComparison {
        differences = List.copyOf(differences);
    }

    /** Whether the two say the same. */
    public boolean same() {
        return differences.isEmpty();
    }

    /** Compares two quotes; options are matched by name, lines by section, code, unit and tax class. */
    public static QuoteComparison compare(Quote before, Quote after) {
        List<Difference> found = new ArrayList<>();
        found.addAll(new FieldComparison("", "", "").of(before, after, FieldComparison.HEAD));
        Map<String, QuoteOption> old = byName(before);
        Map<String, QuoteOption> now = byName(after);
        for (String name : union(old, now)) {
            compareOptions(name, old.get(name), now.get(name), found);
        }
        words("assumptions", before, after, Quote::getAssumptions, found);
        words("exclusions", before, after, Quote::getExclusions, found);
        words("terms", before, after, Quote::getTerms, found);
        words("cautions", before, after, Quote::getCautions, found);
        return new QuoteComparison(found);
    }

    private static void compareOptions(
            String name,
            @org.jspecify.annotations.Nullable QuoteOption before,
            @org.jspecify.annotations.Nullable QuoteOption after,
            List<Difference> found) {
        if (before == null || after == null) {
            found.add(new Difference(
                    before == null ? Kind.ADDED : Kind.REMOVED,
                    name,
                    "",
                    "",
                    "",
                    before == null ? "" : before.getTotal().toPlainString(),
                    after == null ? "" : after.getTotal().toPlainString()));
            return;
        }
        found.addAll(new FieldComparison(name, "", "").of(before, after, FieldComparison.OPTION));
        Map<String, QuoteLine> old = lines(before);
        Map<String, QuoteLine> now = lines(after);
        for (String key : union(old, now)) {
            compareLines(name, key, old.get(key), now.get(key), found);
        }
        missing("enquiries", name, before.getEnquiries(), after.getEnquiries(), found);
    }

    private static void compareLines(
            String option,
            String key,
            @org.jspecify.annotations.Nullable QuoteLine before,
            @org.jspecify.annotations.Nullable QuoteLine after,
            List<Difference> found) {
        String section = key.substring(0, key.indexOf('|'));
        if (before != null && after != null) {
            found.addAll(
                    new FieldComparison(option, section, before.getCode()).of(before, after, FieldComparison.LINE));
            return;
        }
        QuoteLine line = java.util.Objects.requireNonNull(before == null ? after : before);
        String shown = line.getDescription() + ": " + line.getNet().toPlainString();
        found.add(new Difference(
                before == null ? Kind.ADDED : Kind.REMOVED,
                option,
                section,
                line.getCode(),
                "",
                before == null ? "" : shown,
                before == null ? shown : ""));
    }

    private static Map<String, QuoteOption> byName(Quote quote) {
        Map<String, QuoteOption> options = new LinkedHashMap<>();
        quote.getOptions().forEach(option -> options.put(option.getName(), option));
        return options;
    }

    private static Map<String, QuoteLine> lines(QuoteOption option) {
        Map<String, QuoteLine> lines = new LinkedHashMap<>();
        for (QuoteSection section : option.getSections()) {
            for (QuoteLine line : section.getLines()) {
                String key = String.join("|", section.getKey(), line.getCode(), line.getUnit(), line.getTaxClass());
                // A line that is there twice keeps its place among its like.
                String unique = key;
                for (int i = 2; lines.containsKey(unique); i++) {
                    unique = key + "|" + i;
                }
                lines.put(unique, line);
            }
        }
        return lines;
    }

    private static Set<String> union(Map<String, ?> before, Map<String, ?> after) {
        Set<String> union = new LinkedHashSet<>(before.keySet());
        union.addAll(after.keySet());
        return union;
    }

    private static void words(
            String list, Quote before, Quote after, Function<Quote, List<String>> of, List<Difference> found) {
        missing(list, "", of.apply(before), of.apply(after), found);
    }

    private static void missing(
            String list, String option, List<String> before, List<String> after, List<Difference> found) {
        before.stream()
                .filter(text -> !after.contains(text))
                .forEach(text -> found.add(new Difference(Kind.REMOVED, option, "", list, "", text, "")));
        after.stream()
                .filter(text -> !before.contains(text))
                .forEach(text -> found.add(new Difference(Kind.ADDED, option, "", list, "", "", text)));
    }
}
