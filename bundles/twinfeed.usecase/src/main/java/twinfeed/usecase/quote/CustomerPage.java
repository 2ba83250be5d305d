// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.document.QuoteLetter;

/**
 * What the customer reads, in the order of the PDF: the same words, without its layout. For a screen.
 *
 * @param lines the lines
 */
public record CustomerPage(List<Line> lines) {
    /** What a line is. */
    public enum Kind {
        /** The reference, or a heading. */
        HEADING,
        /** A warning of danger, or its heading. */
        DANGER,
        /** A text. */
        TEXT,
        /** A line of a table: what it says of each option. */
        ROW,
        /** A line of the price. */
        PRICE,
        /** A sum. */
        SUM
    }

    /**
     * A line.
     *
     * @param what the text; of a row or price what it is called
     * @param values of a row or price, one for each option; none else
     */
    public record Line(Kind kind, String what, List<String> values) {
        public Line {
            values = List.copyOf(values);
        }
    }

    public CustomerPage {
        lines = List.copyOf(lines);
    }

    static CustomerPage of(QuoteLetter letter) {
        Writer writer = new Writer();
        writer.letter(letter);
        return new CustomerPage(writer.lines);
    }

    private static final class Writer {
        private final List<Line> lines = new ArrayList<>();

        private void add(Kind kind, String text) {
            if (!text.isBlank()) {
                lines.add(new Line(kind, text.strip(), List.of()));
            }
        }

        void letter(QuoteLetter letter) {
            add(Kind.HEADING, letter.reference());
            add(Kind.TEXT, letter.state());
            letter.days().forEach(day -> add(Kind.TEXT, day.label() + ": " + day.text()));
            said(letter.customer());
            said(letter.site());
            part(letter.dangers(), Kind.DANGER);
            said(letter.finding());
            part(letter.toMeasure(), Kind.TEXT);
            if (letter.options().isEmpty()) {
                add(Kind.TEXT, letter.none());
            } else {
                List<String> titles = letter.options().stream()
                        .map(option -> option.number() + ": " + option.title())
                        .toList();
                lines.add(new Line(Kind.SUM, "", titles));
                letter.rows()
                        .forEach(row -> lines.add(new Line(
                                Kind.ROW,
                                row.label(),
                                row.values().stream().map(value -> value.text()).toList())));
            }
            letter.instead().forEach(part -> part(part, Kind.TEXT));
            acceptance(letter.acceptance());
            prices(letter.prices());
            letter.smallPrint().forEach(part -> part(part, Kind.TEXT));
        }

        private void said(QuoteLetter.Said said) {
            if (!said.text().isBlank()) {
                add(Kind.HEADING, said.label());
                said.text().lines().forEach(line -> add(Kind.TEXT, line));
            }
        }

        private void part(QuoteLetter.@Nullable Part part, Kind kind) {
            if (part != null) {
                add(kind == Kind.DANGER ? Kind.DANGER : Kind.HEADING, part.title());
                part.entries().forEach(entry -> add(kind, entry));
            }
        }

        private void acceptance(QuoteLetter.@Nullable Acceptance acceptance) {
            if (acceptance != null) {
                add(Kind.HEADING, acceptance.title());
                add(
                        Kind.TEXT,
                        Stream.concat(Stream.of(acceptance.choice()), acceptance.options().stream())
                                .collect(Collectors.joining("   \u25a1 ")));
                add(Kind.TEXT, String.join("   ", acceptance.fields()));
            }
        }

        private void prices(QuoteLetter.@Nullable PriceTable prices) {
            if (prices != null) {
                add(Kind.HEADING, prices.title());
                lines.add(new Line(Kind.SUM, "", prices.heads()));
                prices.lines().forEach(line -> lines.add(new Line(kind(line), line.what(), line.amounts())));
            }
        }

        private static Kind kind(QuoteLetter.PriceLine line) {
            return switch (line.role()) {
                case SECTION, SUM, TOTAL -> Kind.SUM;
                case LINE -> Kind.PRICE;
            };
        }
    }
}
