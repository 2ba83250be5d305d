// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.desktop.text.Words;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.quote.IssueGate;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuotingService;

/**
 * The way from one state of a survey to its workbook. It has a copy of its own, so that what is written is what stood on the
 * screen when it was asked for, whatever is typed meanwhile.
 */
public final class QuoteWork {
    private final JobServices services;
    private final OpenedJob opened;
    private final AnswerCache cache;
    private @Nullable JobResult result;

    QuoteWork(JobServices services, OpenedJob opened, AnswerCache cache) {
        this.services = services;
        this.opened = opened;
        this.cache = cache;
    }

    /**
     * Judges and prices.
     *
     * @throws IllegalStateException if there is nothing to be quoted; its message says why
     */
    public void compute() {
        JobResult computed = services.paperResult(opened, cache);
        if (computed.quote() == null) {
            boolean noPrices = services.prices(opened.job().getSurvey()) == null;
            throw new IllegalStateException(
                    computed.trouble().isEmpty() && noPrices
                            ? new Words(services.locale()).get("quote.noBook")
                            : computed.trouble());
        }
        result = computed;
    }

    /**
     * Writes the quote; it appears whole or not at all.
     *
     * @param out a PDF if its name ends with .pdf, otherwise a workbook
     * @throws RuntimeException if it cannot be written; its message says why
     */
    public void write(Path out) {
        Ready ready = ready();
        OutputPaths outputs = out.toString().endsWith(".pdf") ? OutputPaths.pdf(out) : OutputPaths.workbook(out);
        QuotingService.write(ready.judged, ready.quote, services.firm(ready.prices), services.papers(), outputs);
    }

    /**
     * Issues what was computed: it takes a number, or is the next revision of a quote that it supersedes. Cannot be undone, and is refused
     * where {@link IssueGate} says why.
     *
     * @param office folder of the office's quotes
     * @param previous file of the latest revision of the quote to be revised; null takes a new number
     * @param reason why it is issued although an option is not known to suit; empty where all are
     * @throws RuntimeException if it cannot be issued; its message says why
     */
    public IssuedQuote issue(Path office, @Nullable Path previous, String reason) {
        Ready ready = ready();
        Words words = new Words(services.locale());
        String refusals = IssueGate.refusals(opened.job().getSurvey(), ready.prices.book(), ready.quote).stream()
                .map(each -> words.get("issue.refusal." + each.key()))
                .collect(Collectors.joining(" "));
        if (!refusals.isEmpty()) {
            throw new IllegalStateException(refusals);
        }
        ready.quote.setEstimateReason(reason.isEmpty() ? null : reason);
        return previous == null
                ? IssuedQuotes.issue(ready.judged, ready.quote, ready.prices.book(), office)
                : IssuedQuotes.revise(ready.judged, ready.quote, ready.prices.book(), previous);
    }

    /**
     * Writes the workbook of what was issued, its digest on it; likewise.
     *
     * @throws RuntimeException if it cannot be written; its message says why
     */
    public void write(IssuedQuote issued, Path out) {
        Ready ready = ready();
        QuotingService.write(
                ready.judged, issued, services.firm(ready.prices), services.papers(), OutputPaths.workbook(out));
    }

    private record Ready(AssessedJob judged, Quote quote, JobServices.Prices prices) {}

    private Ready ready() {
        JobResult computed = result;
        @Nullable AssessedJob judged = computed == null ? null : computed.judged();
        @Nullable Quote quote = computed == null ? null : computed.quote();
        JobServices.@Nullable Prices prices = services.prices(opened.job().getSurvey());
        if (judged == null || quote == null || prices == null) {
            throw new IllegalStateException("nothing was computed");
        }
        return new Ready(judged, quote, prices);
    }
}
