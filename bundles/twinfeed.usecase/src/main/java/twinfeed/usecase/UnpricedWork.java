// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.search.WorkCost;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.units.text.Texts;
import twinfeed.usecase.choices.ChoicesInJob;

/**
 * An item without a price that works need which were offered and might have been the least costly: the search takes them only where no
 * others serve, and nobody would know why something dearer was chosen.
 *
 * @param code the item's price-book code
 * @param lapsed whether the book has a price that no longer holds; otherwise it lacks the code
 * @param works the works that need it
 */
record UnpricedWork(String code, boolean lapsed, List<Remedy> works) {
    private static final Texts TEXTS = new Texts(UnpricedWork.class, "Unpriced");

    /** Works that are named; where more need the item, it is one of those that all of a kind need. */
    private static final int MOST_NAMED = 3;

    UnpricedWork {
        works = List.copyOf(works);
    }

    /** Those of a job, by code. */
    static List<UnpricedWork> of(AssessedJob judged, PriceBook book) {
        LocalDate day = BookCosts.day(book, judged.opened().job().getSurvey().getTakenOn());
        Map<String, Boolean> lapsed = book.getItems().stream()
                .collect(Collectors.toMap(
                        PriceItem::getCode,
                        item -> item.getHoldsUntil() != null && day.isAfter(item.getHoldsUntil()),
                        (one, other) -> one));
        List<String> leftOut = ChoicesInJob.of(judged.opened().job()).without();
        WorkCost.Source costs = BookCosts.of(book, judged.opened());
        Map<String, List<Remedy>> works = new LinkedHashMap<>();
        for (WorkPlan plan : judged.plans()) {
            for (Remedy work : plan.offered()) {
                Set<String> codes = unpriced(work, lapsed);
                if (!codes.isEmpty() && !leftOut.contains(work.id()) && mightBeLess(work, plan, costs)) {
                    codes.forEach(code -> works.computeIfAbsent(code, key -> new ArrayList<>())
                            .add(work));
                }
            }
        }
        return works.entrySet().stream()
                .map(each -> new UnpricedWork(each.getKey(), lapsed.containsKey(each.getKey()), each.getValue()))
                .toList();
    }

    private static Set<String> unpriced(Remedy work, Map<String, Boolean> lapsed) {
        return work.items().stream()
                .map(Remedy.Item::code)
                .filter(code -> lapsed.getOrDefault(code, true))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Not where nothing serves at any price, nor where the rest of the work alone costs more than what was chosen. */
    private static boolean mightBeLess(Remedy work, WorkPlan plan, WorkCost.Source costs) {
        if (plan.works().isEmpty()) {
            return false;
        }
        BigDecimal rest =
                costs.with(plan.before().candidate()).of(List.of(work)).price();
        return plan.cost().enquiries() > 0 || rest.compareTo(plan.cost().price()) < 0;
    }

    /**
     * What was assumed, in words.
     *
     * @param title title of the book
     * @param named the works in words
     */
    String text(Locale locale, String title, List<String> named) {
        String list = named.stream().limit(MOST_NAMED).collect(Collectors.joining("; "));
        return TEXTS.format(
                locale,
                lapsed ? "unpriced.lapsed" : "unpriced.lacking",
                Map.of("code", code, "book", title, "works", named.size() > MOST_NAMED ? list + "; \u2026" : list));
    }
}
