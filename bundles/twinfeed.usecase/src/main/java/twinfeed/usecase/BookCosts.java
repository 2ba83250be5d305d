// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.search.WorkCost;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.pricing.RemedyPrice;
import twinfeed.pricing.RemedyPrices;
import twinfeed.pricing.RequiredItem;
import twinfeed.usecase.choices.ChoicesInJob;
import twinfeed.usecase.choices.WorksLeftOut;

/** What works cost by a price book; what the book lacks counts as a price on enquiry, for nobody knows it. */
public final class BookCosts implements WorkCost.Source {
    private final RemedyPrices prices;

    private BookCosts(PriceBook book, @Nullable LocalDate date) {
        this(RemedyPrices.withReplacement(book, day(book, date)));
    }

    private BookCosts(RemedyPrices prices) {
        this.prices = prices;
    }

    /** That of the survey; of a book that holds from a later day, its first, for works are compared by the prices of the quote to come. */
    static LocalDate day(PriceBook book, @Nullable LocalDate surveyed) {
        LocalDate first = book.getDate();
        return surveyed == null || (first != null && surveyed.isBefore(first)) ? first : surveyed;
    }

    /**
     * What works cost in a job, those left out that its quote leaves out.
     *
     * @param book the price book; without one the fewest works win
     */
    public static WorkCost.Source of(@Nullable PriceBook book, OpenedJob opened) {
        WorkCost.Source costs = book == null
                ? WorkCost.BY_COUNT
                : new BookCosts(book, opened.job().getSurvey().getTakenOn());
        return WorksLeftOut.of(costs, ChoicesInJob.of(opened.job()));
    }

    /** Where the unit stays, no fitting of another fills the least visit. */
    @Override
    public WorkCost.Source with(Candidate candidate) {
        return candidate.present() ? new BookCosts(prices.withoutReplacement()) : this;
    }

    @Override
    public WorkCost of(List<Remedy> works) {
        RemedyPrice price = prices.priceAll(works.stream().map(BookCosts::needs).toList());
        int enquiries = (int)
                works.stream().filter(work -> work.enquiry() || unpriced(work)).count();
        int leadDays = works.stream().mapToInt(Remedy::leadDays).max().orElse(0);
        return new WorkCost(enquiries, price.net().getAmount(), Math.max(price.leadDays(), leadDays));
    }

    private boolean unpriced(Remedy work) {
        return !prices.priced(needs(work));
    }

    private static List<RequiredItem> needs(Remedy work) {
        return work.items().stream()
                .map(item -> new RequiredItem(item.code(), item.quantity()))
                .toList();
    }
}
