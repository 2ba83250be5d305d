// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;

/**
 * Totals over all dwellings: by urgency, by the verdict on the unit that is there, by the verdict on the first offer with its cost, and by work.
 * What grows with the list is numbers alone; works differ in kind and size only, for lengths and counts are not told apart.
 */
final class BatchTotals {
    /** A length or a count at the end of a work's title. */
    private static final Pattern AMOUNT = Pattern.compile("(?:, [\\d.,]+ m| \\([\\d.,]+\\))(?=$| \\()");

    private final Locale locale;
    private final Map<Urgency, Integer> urgencies = new EnumMap<>(Urgency.class);
    private final Map<Verdict, Integer> present = new EnumMap<>(Verdict.class);
    private final Map<Verdict, Sum> offers = new EnumMap<>(Verdict.class);
    private final Map<String, Sum> works = new HashMap<>();
    private final Map<String, Sum> others = new HashMap<>();
    private final Sum all = new Sum();
    private int judged;
    private int repairs;
    private int unknown;
    private int enquiries;

    /** A number of dwellings and what is charged there. */
    private static final class Sum {
        private int dwellings;
        private BigDecimal net = BigDecimal.ZERO;
        private BigDecimal tax = BigDecimal.ZERO;
        private BigDecimal total = BigDecimal.ZERO;

        void add(QuoteOption offer) {
            dwellings++;
            net = net.add(or0(offer.getNet()));
            tax = tax.add(or0(offer.getTax()));
            total = total.add(or0(offer.getTotal()));
        }

        void add(BigDecimal amount) {
            dwellings++;
            net = net.add(amount);
        }
    }

    BatchTotals(Locale locale) {
        this.locale = locale;
    }

    private static BigDecimal or0(@Nullable BigDecimal amount) {
        return amount == null ? BigDecimal.ZERO : amount;
    }

    /** Counts a dwelling in. */
    void add(Dwelling dwelling) {
        judged++;
        repairs += RepairRow.count(dwelling) > 0 ? 1 : 0;
        urgencies.merge(
                Urgency.of(
                        dwelling.judged().record(),
                        dwelling.judged().opened().job().getSurvey()),
                1,
                Integer::sum);
        OptionAssessment there = Urgency.present(dwelling.judged().record());
        if (there == null) {
            unknown++;
        } else {
            present.merge(there.getVerdict(), 1, Integer::sum);
        }
        QuoteOption first = DwellingSheets.first(dwelling);
        if (first != null) {
            all.add(first);
            offers.computeIfAbsent(first.getVerdict(), verdict -> new Sum()).add(first);
            enquiries += first.getEnquiries().isEmpty() ? 0 : 1;
            costs(dwelling, first);
        }
    }

    private void costs(Dwelling dwelling, QuoteOption first) {
        Map<String, String> titles = new HashMap<>();
        Map<String, BigDecimal> ofWork = new HashMap<>();
        Map<String, BigDecimal> ofSection = new HashMap<>();
        for (Remedy remedy : DwellingSheets.remedies(dwelling, first)) {
            String title = AMOUNT.matcher(String.valueOf(remedy.getTitle())).replaceFirst("");
            titles.put(remedy.getId(), title);
            ofWork.put(title, BigDecimal.ZERO);
        }
        for (QuoteSection section : first.getSections()) {
            for (QuoteLine line : section.getLines()) {
                String work = titles.get(String.valueOf(line.getReason()));
                if (work == null) {
                    ofSection.merge(String.valueOf(section.getTitle()), or0(line.getNet()), BigDecimal::add);
                } else {
                    ofWork.merge(work, or0(line.getNet()), BigDecimal::add);
                }
            }
        }
        ofWork.forEach(
                (work, net) -> works.computeIfAbsent(work, each -> new Sum()).add(net));
        ofSection.forEach((section, net) ->
                others.computeIfAbsent(section, each -> new Sum()).add(net));
    }

    /** How many dwellings complain of something. */
    int repairs() {
        return repairs;
    }

    /** The totals: by what, what, in how many dwellings, net, tax, with tax. */
    List<List<@Nullable Object>> rows() {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (Urgency urgency : Urgency.values()) {
            count(rows, "totals.urgency", text("urgency." + urgency.key()), urgencies.getOrDefault(urgency, 0));
        }
        count(rows, "totals.complaints", text("totals.complaints.what"), repairs);
        present.forEach((verdict, count) -> count(rows, "totals.present", verdict, count));
        if (unknown > 0) {
            count(rows, "totals.present", text("totals.unknown"), unknown);
        }
        offers.forEach((verdict, sum) -> sum(rows, "totals.offer", verdict, sum, true));
        if (judged > all.dwellings) {
            count(rows, "totals.offer", text("totals.nothing"), judged - all.dwellings);
        }
        if (enquiries > 0) {
            count(rows, "totals.offer", text("totals.enquiries"), enquiries);
        }
        sorted(works).forEach(work -> sum(rows, "totals.work", work.getKey(), work.getValue(), false));
        sorted(others).forEach(other -> sum(rows, "totals.other", other.getKey(), other.getValue(), false));
        sum(rows, "totals.all", text("totals.all.what"), all, true);
        return rows;
    }

    /** Dearest first, then by name. */
    private static List<Map.Entry<String, Sum>> sorted(Map<String, Sum> sums) {
        return sums.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<String, Sum> entry) -> entry.getValue().net)
                        .reversed()
                        .thenComparing(Map.Entry::getKey))
                .toList();
    }

    private String text(String key) {
        return DwellingSheets.TEXTS.get(locale, key);
    }

    private void count(List<List<@Nullable Object>> rows, String group, Object what, int dwellings) {
        rows.add(Arrays.asList(text(group), what, dwellings, null, null, null));
    }

    private void sum(List<List<@Nullable Object>> rows, String group, Object what, Sum sum, boolean withTax) {
        rows.add(Arrays.asList(
                text(group), what, sum.dwellings, sum.net, withTax ? sum.tax : null, withTax ? sum.total : null));
    }
}
