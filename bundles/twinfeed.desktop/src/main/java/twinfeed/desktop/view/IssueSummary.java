// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Days;
import twinfeed.desktop.text.Words;
import twinfeed.document.drawing.Mark;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.quote.IssueGate;

/**
 * What is to be issued, in short, for the person who issues it.
 *
 * @param ready whether everything is worked out; before that nothing can be issued
 * @param customer name and address of the customer; what is missing is said
 * @param site name and address of the dwelling; what is missing is said
 * @param options what is offered
 * @param prices the price book and the day since which it holds
 * @param date day of the quote, and until when it holds
 * @param unproven whether an option is not known to suit, so that a reason must be typed before it is issued
 * @param refusals why it may not be issued, in sentences; empty if it may
 */
public record IssueSummary(
        boolean ready,
        String customer,
        String site,
        List<Option> options,
        String prices,
        String date,
        boolean unproven,
        List<String> refusals) {
    /**
     * One option of the quote.
     *
     * @param title its heater
     * @param verdict whether that suits
     * @param total its price with tax; empty if it has none
     */
    public record Option(String title, Mark verdict, String total) {}

    /** Of a job as it is now. */
    public static IssueSummary of(JobSession session, Words words) {
        Survey survey = session.survey();
        JobResult result = session.result();
        @Nullable Quote quote = result == null ? null : result.quote();
        JobServices.@Nullable Prices prices = session.services().prices(survey);
        Customer customer = survey.getCustomer();
        Site site = survey.getSite();
        boolean ready = session.current();
        return new IssueSummary(
                ready,
                customer(customer, words),
                lines(site == null ? null : site.getName(), site == null ? null : site.getAddress(), words),
                quote == null
                        ? List.of()
                        : quote.getOptions().stream()
                                .map(option -> option(option, quote, words))
                                .toList(),
                prices == null ? words.get("issue.missing") : prices(prices, words),
                quote == null ? words.get("issue.missing") : date(quote, words),
                quote != null && !Offers.unproven(quote).isEmpty(),
                ready
                        ? IssueGate.refusals(survey, prices == null ? null : prices.book(), quote).stream()
                                .map(each -> words.get("issue.refusal." + each.key()))
                                .toList()
                        : List.of());
    }

    /** A customer with an address and no name lacks the name. */
    private static String customer(@Nullable Customer customer, Words words) {
        if (customer == null) {
            return words.get("issue.missing");
        }
        String name = customer.getName();
        boolean nameless = name == null || name.isBlank();
        return lines(nameless ? words.get("issue.missing") : name, customer.getAddress(), words);
    }

    private static String lines(@Nullable String name, @Nullable String address, Words words) {
        String text = Stream.of(name, address)
                .filter(Objects::nonNull)
                .filter(each -> !each.isBlank())
                .collect(Collectors.joining("; "));
        return text.isEmpty() ? words.get("issue.missing") : text;
    }

    private static Option option(QuoteOption option, Quote quote, Words words) {
        Mark verdict = option.getVerdict() == null
                ? new Mark("?", words.get("issue.missing"), twinfeed.document.shape.Tone.DOUBT)
                : Mark.of(option.getVerdict(), words.locale());
        return new Option(option.getTitle(), verdict, OptionPrice.of(option, quote, words));
    }

    private static String prices(JobServices.Prices prices, Words words) {
        return words.format(
                "issue.prices.of",
                Map.of(
                        "book",
                        prices.book().getTitle(),
                        "date",
                        Days.of(prices.book().getDate(), words)));
    }

    private static String date(Quote quote, Words words) {
        String date = Days.of(quote.getDate(), words);
        return quote.getValidUntil() == null
                ? date
                : words.format("issue.date.of", Map.of("date", date, "until", Days.of(quote.getValidUntil(), words)));
    }
}
