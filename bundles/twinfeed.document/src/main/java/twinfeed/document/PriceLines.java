// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import twinfeed.document.QuoteLetter.PriceLine;
import twinfeed.document.QuoteLetter.PriceTable;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.quote.TaxSum;

/** The lines of all options in one table: what is charged, and beside it the amount in each option that has it. */
final class PriceLines {
    private static final char NO_BREAK = '\u00a0';

    private static final String CONTINGENCY = "contingency";
    private static final List<String> ORDER =
            List.of("unit", "remedial", "labour", "testing", "travel", "making-good", CONTINGENCY, "discount");

    private final List<QuoteOption> options;
    private final DocumentTexts words;
    private final PrintFormat paper;
    private final QuantityText quantities;
    private final List<PriceLine> lines = new ArrayList<>();

    PriceLines(List<QuoteOption> options, DocumentTexts words, PrintFormat paper) {
        this.options = options;
        this.words = words;
        this.paper = paper;
        this.quantities = new QuantityText(words);
    }

    /** The table, or null if no option has a line. */
    @Nullable
    PriceTable table(List<String> heads) {
        if (options.stream().flatMap(option -> option.getSections().stream()).allMatch(section -> section.getLines()
                .isEmpty())) {
            return null;
        }
        sections().forEach(this::section);
        sum("quote.net", QuoteOption::getNet, false);
        taxes();
        sum("quote.total", QuoteOption::getTotal, true);
        return new PriceTable(words.get("lines.title"), heads, lines);
    }

    /** Keys of the sections, each once, in the order in which a job goes; those that are not known follow. */
    private Map<String, String> sections() {
        Map<String, String> titles = new LinkedHashMap<>();
        options.stream()
                .flatMap(option -> option.getSections().stream())
                .filter(section -> !section.getLines().isEmpty())
                .sorted(Comparator.comparingInt(
                        section -> ORDER.contains(key(section)) ? ORDER.indexOf(key(section)) : ORDER.size()))
                .forEach(section -> titles.putIfAbsent(key(section), text(section.getTitle())));
        return titles;
    }

    private static String key(QuoteSection section) {
        return section.getKey() == null ? text(section.getTitle()) : section.getKey();
    }

    private void section(String key, String title) {
        lines.add(new PriceLine(title, List.of(), PriceLine.Role.SECTION));
        Map<String, List<@Nullable BigDecimal>> amounts = new LinkedHashMap<>();
        for (int at = 0; at < options.size(); at++) {
            for (QuoteSection section : options.get(at).getSections()) {
                if (key(section).equals(key)) {
                    add(section.getLines(), at, amounts);
                }
            }
        }
        rows(amounts, PriceLine.Role.LINE);
    }

    private void rows(Map<String, List<@Nullable BigDecimal>> amounts, PriceLine.Role role) {
        amounts.forEach((what, row) ->
                lines.add(new PriceLine(what, row.stream().map(paper::amount).toList(), role)));
    }

    /** An amount for each option, none of them known yet. */
    private List<@Nullable BigDecimal> row() {
        return new ArrayList<>(Collections.nCopies(options.size(), null));
    }

    private void add(List<QuoteLine> some, int at, Map<String, List<@Nullable BigDecimal>> amounts) {
        for (QuoteLine line : some) {
            // Labour of a thing that stands in the same section is told with the thing.
            if (thing(some, line) != null) {
                continue;
            }
            QuoteLine labour = labour(some, line);
            String what = labour == null ? what(line) : what(line) + ", " + quantity(labour);
            List<@Nullable BigDecimal> row = amounts.computeIfAbsent(what, each -> row());
            BigDecimal net = labour == null ? net(line) : net(line).add(net(labour));
            BigDecimal before = row.get(at);
            row.set(at, before == null ? net : before.add(net));
        }
    }

    /** The labour of a thing in the same section: one task, told in one line. */
    private @Nullable QuoteLine labour(List<QuoteLine> some, QuoteLine line) {
        return quantities.labour(line) ? null : other(some, line, true);
    }

    /** The thing that a line of labour is for, in the same section. */
    private @Nullable QuoteLine thing(List<QuoteLine> some, QuoteLine line) {
        return quantities.labour(line) ? other(some, line, false) : null;
    }

    private @Nullable QuoteLine other(List<QuoteLine> some, QuoteLine line, boolean labour) {
        List<QuoteLine> same = some.stream()
                .filter(each -> each.getCode() != null && each.getCode().equals(line.getCode()))
                .toList();
        return same.size() == 2 && quantities.labour(same.get(0)) != quantities.labour(same.get(1))
                ? same.get(quantities.labour(same.get(0)) == labour ? 0 : 1)
                : null;
    }

    private static BigDecimal net(QuoteLine line) {
        return line.getNet() == null ? BigDecimal.ZERO : line.getNet();
    }

    /** What a tradesperson writes: "Cable 10 mm², 8.5 m", "Changing the heater, 50 min", "Contingency, 5 %"; a quantity stays on one line. */
    private String what(QuoteLine line) {
        String quantity = quantity(line);
        return quantity.isEmpty() ? text(line.getDescription()) : text(line.getDescription()) + ", " + quantity;
    }

    private String quantity(QuoteLine line) {
        return quantities.behind(line).replace(' ', NO_BREAK);
    }

    /** Tax by rate, in the words of the quote. */
    private void taxes() {
        Map<String, List<@Nullable BigDecimal>> amounts = new LinkedHashMap<>();
        for (int at = 0; at < options.size(); at++) {
            for (TaxSum sum : options.get(at).getTaxes()) {
                String label = sum.getLabel() == null
                        ? words.get("quote.tax")
                        : words.get("lines.tax", "label", sum.getLabel());
                amounts.computeIfAbsent(label, each -> row()).set(at, sum.getTax());
            }
        }
        rows(amounts, PriceLine.Role.SUM);
    }

    private void sum(String key, Function<QuoteOption, @Nullable BigDecimal> amount, boolean total) {
        lines.add(new PriceLine(
                words.get(key),
                options.stream()
                        .map(option -> paper.amount(amount.apply(option)))
                        .toList(),
                total ? PriceLine.Role.TOTAL : PriceLine.Role.SUM));
    }

    private static String text(@Nullable String text) {
        return Objects.requireNonNullElse(text, "");
    }
}
