// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.nio.file.Path;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.pricing.life.LifeException;
import twinfeed.pricing.life.OpenedQuote;
import twinfeed.pricing.life.QuoteComparison;
import twinfeed.pricing.life.QuoteFolder;

/** Issues quotes into an office's folder, opens issued ones and compares two of them. */
final class IssuedQuotes {
    OpenedQuote issue(Judged judged, Quote draft, PriceBook book, Path office) {
        try {
            return new QuoteFolder(office)
                    .issue(draft, judged.opened().job().getSurvey(), judged.record(), book, Office.VERSION);
        } catch (LifeException refused) {
            throw new UnusableException(office + ": " + refused.getMessage(), refused);
        } catch (IOException unwritable) {
            throw new InputException(
                    InputProblem.ofFile(
                            office.toString(),
                            "the quote cannot be written there",
                            "name a folder that can be written"),
                    unwritable);
        }
    }

    QuoteComparison compare(Path before, Path after) {
        return QuoteComparison.compare(open(before).current(), open(after).current());
    }

    OpenedQuote open(Path file) {
        try {
            return QuoteFolder.open(file);
        } catch (LifeException refused) {
            throw new UnusableException(file + ": " + refused.getMessage(), refused);
        } catch (IOException unreadable) {
            throw new InputException(
                    InputProblem.ofFile(file.toString(), "it cannot be read", "name an issued quote, *.quote"),
                    unreadable);
        }
    }
}
