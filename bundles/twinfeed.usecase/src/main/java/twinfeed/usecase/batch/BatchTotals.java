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
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Verdict;

/**
 * Totals over all dwellings: by urgency, by the verdict on the unit that is there, by the verdict on the first offer with its cost, and by work.
 * What grows with the list is numbers alone; works differ in kind and size only, for lengths and counts are not told apart.
 */
final class BatchTotals {
    private final Locale locale;
    private final Map<Urgency, Integer> urgencies = new EnumMap<>(Urgency.class);
    private final Map<Verdict, Integer> present = new EnumMap<>(Verdict.class);
    private final Map<Verdict, Sum> offers = new EnumMap<>(Verdict.class);
    private final Map<String, Sum> works = new HashMap<>();
    private final Map<String, Sum> others = new HashMap<>();
    private final Sum all = new Sum();
    private final Sum suiting = new Sum();
    private final Sum estimates = new Sum();
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

        void add(DwellingOffer offer) {
            dwellings++;
            net = net.add(offer.net());
            tax = tax.add(offer.tax());
            total = total.add(offer.total());
        }

        void add(BigDecimal amount) {
            dwellings++;
            net = net.add(amount);
        }
    }

    BatchTotals(Locale locale) {
        this.locale = locale;
    }

    /** Counts a dwelling in. */
    void add(DwellingResult dwelling) {
        judged++;
        repairs += dwelling.judged().complaints() > 0 ? 1 : 0;
        urgencies.merge(dwelling.urgency(), 1, Integer::sum);
        Verdict there = dwelling.judged().present();
        if (there == null) {
            unknown++;
        } else {
            present.merge(there, 1, Integer::sum);
        }
        DwellingOffer offer = dwelling.offer();
        if (offer != null) {
            all.add(offer);
            (offer.estimate() ? estimates : suiting).add(offer);
            offers.computeIfAbsent(offer.verdict(), verdict -> new Sum()).add(offer);
            enquiries += offer.onRequest() ? 1 : 0;
            offer.works().forEach((work, net) -> works.computeIfAbsent(work, each -> new Sum())
                    .add(net));
            offer.others().forEach((section, net) -> others.computeIfAbsent(section, each -> new Sum())
                    .add(net));
        }
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
        if (estimates.dwellings > 0) {
            sum(rows, "totals.parts", text("totals.suiting"), suiting, true);
            sum(rows, "totals.parts", text("totals.estimates"), estimates, true);
        }
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
