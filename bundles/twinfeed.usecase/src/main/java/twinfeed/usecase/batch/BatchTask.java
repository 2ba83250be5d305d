// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;

/**
 * How the dwellings of a list are to be judged and priced.
 *
 * @param pattern a job whose survey stands for everything that a row does not say; its candidates are checked in every dwelling
 * @param book prices
 * @param firm who quotes
 * @param date day of the prices
 * @param locale language of the results
 */
public record BatchTask(OpenedJob pattern, PriceBook book, FirmFile firm, LocalDate date, Locale locale) {
    /** The heaters that the pattern asks about, in the order of the catalogue. */
    List<Heater> heaters() {
        List<String> asked = pattern.job().getSurvey().getCandidates();
        return pattern.catalogue().getHeaters().stream()
                .filter(heater -> asked.isEmpty() || asked.contains(heater.getId()))
                .toList();
    }
}
