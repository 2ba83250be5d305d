// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.pricing.QuoteException;
import twinfeed.pricing.RemedyPrices;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.UnusableException;

/**
 * How the dwellings of a list are to be judged and priced.
 *
 * @param pattern a job whose survey stands for everything that a row does not say; its candidates are checked in every dwelling
 * @param book prices
 * @param firm who quotes
 * @param date day of the prices
 * @param locale language of the results
 * @param today today's date, after which no dwelling can have been surveyed; null if nobody knows it, and then no day is taken for one to come
 */
public record BatchTask(
        OpenedJob pattern, PriceBook book, FirmFile firm, LocalDate date, Locale locale, @Nullable LocalDate today) {
    /** The same where nobody knows what day it is. */
    public BatchTask(OpenedJob pattern, PriceBook book, FirmFile firm, LocalDate date, Locale locale) {
        this(pattern, book, firm, date, locale, null);
    }

    /**
     * Refuses prices that do not hold on the day. They are wrong for every row, so the list is refused as a whole, before its first row.
     *
     * @throws UnusableException if they do not
     */
    void checkPrices() {
        try {
            RemedyPrices.withReplacement(book, date);
        } catch (QuoteException refused) {
            throw new UnusableException(refused.message(locale), refused);
        }
    }

    /** The heaters that the pattern asks about, in the order of the catalogue. */
    List<Heater> heaters() {
        List<String> asked = pattern.job().getSurvey().getCandidates();
        return pattern.catalogue().getHeaters().stream()
                .filter(heater -> asked.isEmpty() || asked.contains(heater.getId()))
                .toList();
    }
}
