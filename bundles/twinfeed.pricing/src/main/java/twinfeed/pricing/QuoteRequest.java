// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.texts.StandingTexts;

/**
 * What a quote is to be made of.
 *
 * @param survey the survey
 * @param assessment what follows from it; remedies stand in its options
 * @param book the price book
 * @param date date of the quote; it decides on tax rates
 * @param chosen ids of the heaters to offer, 1 to 4, or {@link #PRESENT}; none lets the verdicts decide
 * @param extras what the estimator adds to an option, by the id under which it is chosen
 * @param discount a reduction of every option, or null
 * @param faults what was reported of the unit that is there, and its repair, in the language of the texts
 * @param locale language of the texts
 * @param texts standing texts in that language, perhaps in a firm's own wording
 */
public record QuoteRequest(
        Survey survey,
        Assessment assessment,
        PriceBook book,
        LocalDate date,
        List<String> chosen,
        Map<String, List<RequiredItem>> extras,
        @Nullable Discount discount,
        FaultReport faults,
        Locale locale,
        StandingTexts texts) {
    /** Stands for the unit that is there: work on its feeds and repairs, no new heater. */
    public static final String PRESENT = twinfeed.model.check.Offers.STAYS;

    /** Most options side by side. */
    public static final int MOST_OPTIONS = 4;

    public QuoteRequest {
        chosen = List.copyOf(chosen);
        extras = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(extras));
    }

    /** With the options that the verdicts decide on, no extras and no discount, in English. */
    public static QuoteRequest of(Survey survey, Assessment assessment, PriceBook book, LocalDate date) {
        return new QuoteRequest(
                survey,
                assessment,
                book,
                date,
                List.of(),
                Map.of(),
                null,
                FaultReport.NONE,
                Locale.ENGLISH,
                StandingTexts.of(Locale.ENGLISH));
    }

    /** With these heaters as options, in this order, whatever their verdicts. */
    public QuoteRequest choosing(List<String> heaters) {
        return new QuoteRequest(survey, assessment, book, date, heaters, extras, discount, faults, locale, texts);
    }

    /** With further needs of one option, added to those that it has. */
    public QuoteRequest adding(String heater, List<RequiredItem> needs) {
        Map<String, List<RequiredItem>> more = new LinkedHashMap<>(extras);
        more.merge(heater, List.copyOf(needs), (one, two) -> java.util.stream.Stream.of(one, two)
                .flatMap(List::stream)
                .toList());
        return new QuoteRequest(survey, assessment, book, date, chosen, more, discount, faults, locale, texts);
    }

    /** With a discount, or without one. */
    public QuoteRequest discounted(@Nullable Discount reduction) {
        return new QuoteRequest(survey, assessment, book, date, chosen, extras, reduction, faults, locale, texts);
    }

    /** In another language, with the standing texts shipped for it. */
    public QuoteRequest in(Locale language) {
        return in(language, StandingTexts.of(language));
    }

    /** In another language, with these standing texts. */
    public QuoteRequest in(Locale language, StandingTexts standing) {
        return new QuoteRequest(survey, assessment, book, date, chosen, extras, discount, faults, language, standing);
    }

    /** With what was reported of the unit that is there. */
    public QuoteRequest reporting(FaultReport report) {
        return new QuoteRequest(survey, assessment, book, date, chosen, extras, discount, report, locale, texts);
    }

    /** With the price book in the language of the texts. */
    QuoteRequest translated() {
        return new QuoteRequest(
                survey,
                assessment,
                TranslatedBook.of(book, locale),
                date,
                chosen,
                extras,
                discount,
                faults,
                locale,
                texts);
    }
}
