// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import twinfeed.model.pricebook.PriceBook;

/**
 * Prices of sets of remedies for the search of the least costly work: what a set adds to a quote that is made with the same
 * book, by the same rules. Needs of one code are added before waste and whole lengths; what a job needs once (unit
 * {@code visit}) is counted once, also against what the job needs anyway; labour first fills the minimum visit.
 *
 * <p>Adding a remedy never lowers the price, for no price is negative and every rounding is monotone. Safe for threads.
 */
public final class RemedyPrices {
    /** Key of an assumption that works could not be priced, which concerns the office and not the customer. */
    public static final String UNPRICED = "workPrice";

    private final PriceList prices;
    private final Pricer pricer;
    private final boolean replacement;
    private final Money without;

    private RemedyPrices(PriceList prices, boolean replacement) {
        this.prices = prices;
        this.replacement = replacement;
        pricer = new Pricer(prices);
        without = pricer.total(pricer.lines(job(List.of())));
    }

    /**
     * Prices of work that comes with a new heater.
     *
     * @throws QuoteException if the book cannot be used on that day
     */
    public static RemedyPrices withReplacement(PriceBook book, LocalDate date) {
        return new RemedyPrices(new PriceList(book, date), true);
    }

    /**
     * Prices of work on the feeds of the unit that stays.
     *
     * @throws QuoteException if the book cannot be used on that day
     */
    public static RemedyPrices withoutReplacement(PriceBook book, LocalDate date) {
        return new RemedyPrices(new PriceList(book, date), false);
    }

    /** The same prices of work on the feeds of the unit that stays. */
    public RemedyPrices withoutReplacement() {
        return new RemedyPrices(prices, false);
    }

    /** Currency of the prices. */
    public CurrencyUnit currency() {
        return prices.currency();
    }

    /** Whether every item of a remedy has a price: none is missing in the book, and none is on enquiry. */
    public boolean priced(Collection<RequiredItem> remedy) {
        return remedy.stream().allMatch(need -> prices.find(need.code())
                .filter(item -> !item.onEnquiry())
                .isPresent());
    }

    /** What one remedy adds on its own. */
    public RemedyPrice price(Collection<RequiredItem> remedy) {
        return priceAll(List.of(remedy));
    }

    /** What several remedies add together. */
    public RemedyPrice priceAll(Collection<? extends Collection<RequiredItem>> remedies) {
        List<RequiredItem> needs = new ArrayList<>();
        remedies.forEach(needs::addAll);
        BillOfQuantities job = job(needs);
        Set<String> missing = new LinkedHashSet<>();
        boolean enquiry = false;
        int leadDays = 0;
        for (RequiredItem need : needs) {
            PricedItem item = prices.find(need.code()).orElse(null);
            if (item == null) {
                missing.add(need.code());
            } else {
                enquiry |= item.onEnquiry();
                leadDays = Math.max(leadDays, item.leadDays());
            }
        }
        Money net = pricer.total(pricer.lines(job)).minus(without);
        return new RemedyPrice(net, enquiry, leadDays, List.copyOf(missing));
    }

    /** What a visit costs that renews parts of the unit that is there, as a quote charges it. */
    public RemedyPrice repair(List<String> codes) {
        BillOfQuantities visit = new BillOfQuantities(prices);
        FaultReport.Repair.needs(codes).forEach(need -> visit.add(need, ""));
        visit.complete(false, "");
        boolean enquiry = visit.all().stream().anyMatch(ask -> ask.item().onEnquiry());
        int leadDays = visit.all().stream()
                .mapToInt(ask -> ask.item().leadDays())
                .max()
                .orElse(0);
        return new RemedyPrice(
                pricer.total(pricer.lines(visit)),
                enquiry,
                leadDays,
                List.copyOf(visit.missing().keySet()));
    }

    private BillOfQuantities job(List<RequiredItem> needs) {
        BillOfQuantities asks = new BillOfQuantities(prices);
        needs.forEach(need -> asks.add(need, ""));
        // What other work makes needless still counts here, for a price that fell with more work would mislead the
        // search. A work that makes another needless does what that does, so the least costly set never holds both.
        asks.addCompanions("");
        asks.addStandard(replacement, "");
        return asks;
    }
}
