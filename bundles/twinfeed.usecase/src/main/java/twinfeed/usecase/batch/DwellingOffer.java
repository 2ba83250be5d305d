// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;

/**
 * What the first offer to a dwelling adds to the totals of a list.
 *
 * @param verdict whether the heater suits
 * @param net price without tax
 * @param tax the tax
 * @param total price with tax
 * @param onRequest whether a price in it is to be asked for
 * @param works what each work costs without tax, by its title
 * @param others what is not charged for a work costs without tax, by its heading
 */
record DwellingOffer(
        Verdict verdict,
        BigDecimal net,
        BigDecimal tax,
        BigDecimal total,
        boolean onRequest,
        Map<String, BigDecimal> works,
        Map<String, BigDecimal> others) {
    /** A length or a count at the end of a work's title: works differ in kind and size only. */
    private static final Pattern AMOUNT = Pattern.compile("(?:, [\\d.,]+ m| \\([\\d.,]+\\))(?=$| \\()");

    /** Of an offer to a dwelling. */
    static DwellingOffer of(Dwelling dwelling, QuoteOption first) {
        Map<String, String> titles = new HashMap<>();
        Map<String, BigDecimal> works = new TreeMap<>();
        Map<String, BigDecimal> others = new TreeMap<>();
        for (Remedy remedy : DwellingSheets.remedies(dwelling, first)) {
            String title = AMOUNT.matcher(String.valueOf(remedy.getTitle())).replaceFirst("");
            titles.put(remedy.getId(), title);
            works.put(title, BigDecimal.ZERO);
        }
        for (QuoteSection section : first.getSections()) {
            for (QuoteLine line : section.getLines()) {
                String work = titles.get(String.valueOf(line.getReason()));
                if (work == null) {
                    others.merge(String.valueOf(section.getTitle()), or0(line.getNet()), BigDecimal::add);
                } else {
                    works.merge(work, or0(line.getNet()), BigDecimal::add);
                }
            }
        }
        return new DwellingOffer(
                first.getVerdict(),
                or0(first.getNet()),
                or0(first.getTax()),
                or0(first.getTotal()),
                !first.getEnquiries().isEmpty(),
                works,
                others);
    }

    /** Whether it is only an estimate: readings are missing without which nobody can tell whether the heater suits. */
    boolean estimate() {
        return Offers.open(verdict);
    }

    private static BigDecimal or0(@Nullable BigDecimal amount) {
        return amount == null ? BigDecimal.ZERO : amount;
    }

    /** The offer as rows: its figures, then a row a work, then {@code null} and a row for each other heading. */
    List<List<@Nullable Object>> rows() {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        rows.add(Arrays.asList(verdict, net, tax, total, onRequest ? 1 : 0, works.size()));
        works.forEach((title, amount) -> rows.add(List.of(title, amount)));
        others.forEach((title, amount) -> rows.add(List.of(title, amount)));
        return rows;
    }

    /** The offer that such rows were made of; none of no rows. */
    static @Nullable DwellingOffer of(List<List<@Nullable Object>> rows) {
        if (rows.isEmpty()) {
            return null;
        }
        List<@Nullable Object> figures = rows.get(0);
        int workCount = (Integer) Objects.requireNonNull(figures.get(5));
        return new DwellingOffer(
                (Verdict) Objects.requireNonNull(figures.get(0)),
                amount(figures.get(1)),
                amount(figures.get(2)),
                amount(figures.get(3)),
                Objects.equals(figures.get(4), 1),
                amounts(rows.subList(1, 1 + workCount)),
                amounts(rows.subList(1 + workCount, rows.size())));
    }

    private static Map<String, BigDecimal> amounts(List<List<@Nullable Object>> rows) {
        Map<String, BigDecimal> amounts = new TreeMap<>();
        rows.forEach(row -> amounts.put(String.valueOf(row.get(0)), amount(row.get(1))));
        return amounts;
    }

    private static BigDecimal amount(@Nullable Object cell) {
        return (BigDecimal) Objects.requireNonNull(cell);
    }
}
