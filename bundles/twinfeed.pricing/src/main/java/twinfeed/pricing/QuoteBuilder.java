// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteState;

/**
 * Makes the draft of a quote: options side by side, each with its sections, lines, tax by rate, total and stage payments, and the
 * words around them. It changes none of what it is given, and the same request gives the same quote.
 */
public final class QuoteBuilder {
    private final QuoteRequest request;
    private final PriceList prices;

    private QuoteBuilder(QuoteRequest request) {
        this.request = request;
        prices = new PriceList(request.book(), request.date());
    }

    /**
     * Makes a draft.
     *
     * @throws QuoteException if the book cannot be used on that day or lacks a code
     */
    public static Quote draft(QuoteRequest request) {
        return new QuoteBuilder(request.translated()).build();
    }

    private Quote build() {
        List<OptionAssessment> options = OptionChoice.of(request);
        ContingencyReasons doubts = new ContingencyReasons(request.survey(), request.texts());
        OptionWriter writer = new OptionWriter(request, prices, doubts);
        List<BillOfQuantities> asks = options.stream().map(writer::asks).toList();
        refuseMissing(options, asks);
        Quote quote = head();
        for (int i = 0; i < asks.size(); i++) {
            quote.getOptions().add(writer.write(options.get(i), asks.get(i)));
        }
        Optional<Recommendation> recommended = Recommendation.of(request, quote, options);
        // The option that is recommended stands first; one that waits for the network operator's price is offered after
        // it.
        recommended.ifPresent(one -> quote.getOptions().move(0, one.option()));
        new QuoteTexts(request, quote, options, asks, recommended.orElse(null)).write(quote, doubts);
        return quote;
    }

    private Quote head() {
        PriceBook book = request.book();
        if (book.getValidDays() == null) {
            throw new QuoteException("validDays");
        }
        LocalDate date = request.date();
        Quote quote = QuoteFactory.eINSTANCE.createQuote();
        quote.setRevision(1);
        quote.setDate(date);
        quote.setValidUntil(date.plusDays(book.getValidDays()));
        quote.setState(QuoteState.DRAFT);
        quote.setCurrency(prices.currency().getCode());
        quote.setRounding(prices.rounding().key());
        quote.getReported().addAll(request.faults().reported());
        quote.setFault(request.faults().fault());
        quote.setRepairLeftOut(request.faults().leftOut());
        quote.setBookTitle(book.getTitle());
        quote.setBookDate(book.getDate());
        quote.setBookNote(book.getNote());
        return quote;
    }

    /** Names every code that the book lacks and who asks for it, of all options at once. */
    private void refuseMissing(List<OptionAssessment> options, List<BillOfQuantities> asks) {
        Map<String, Set<String>> missing = new LinkedHashMap<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < asks.size(); i++) {
            if (!asks.get(i).missing().isEmpty()) {
                names.add(OptionChoice.name(options.get(i)));
            }
            asks.get(i).missing().forEach((code, reasons) -> missing.computeIfAbsent(code, key -> new LinkedHashSet<>())
                    .addAll(reasons));
        }
        if (!missing.isEmpty()) {
            String list = missing.entrySet().stream()
                    .map(entry -> entry.getKey() + " (" + String.join(", ", entry.getValue()) + ")")
                    .collect(Collectors.joining(", "));
            throw new QuoteException(
                    "missingCodes",
                    list,
                    String.join(", ", names),
                    request.book().getTitle());
        }
    }
}
