// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.model.work.WorkDone;

/**
 * A quote that can be issued, with all that is frozen beside it.
 *
 * @param quote the draft
 * @param survey the house
 * @param assessment what was found
 * @param book the prices
 * @param program version of the program
 * @param pictures the files of its photographs by the name that the survey has for them
 * @param withWork the supplies with the work of the first option done; absent where that needs none
 */
public record QuoteDraft(
        Quote quote,
        Survey survey,
        Assessment assessment,
        PriceBook book,
        String program,
        Map<String, Path> pictures,
        @Nullable WorkDone withWork) {
    /** A quote whose first option needs no work. */
    public QuoteDraft(
            Quote quote,
            Survey survey,
            Assessment assessment,
            PriceBook book,
            String program,
            Map<String, Path> pictures) {
        this(quote, survey, assessment, book, program, pictures, null);
    }

    /**
     * What is frozen once it is issued.
     *
     * @param issued the quote with its number
     * @param photos the names under which its photographs are kept
     */
    FrozenQuote frozen(Quote issued, SortedMap<String, String> photos) {
        return FrozenQuote.of(issued, survey, assessment, book, program)
                .with(photos)
                .with(withWork);
    }
}
