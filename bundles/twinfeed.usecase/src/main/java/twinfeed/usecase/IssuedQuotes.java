// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.pricing.life.LifeException;
import twinfeed.pricing.life.OpenedQuote;
import twinfeed.pricing.life.QuoteComparison;
import twinfeed.pricing.life.QuoteFolder;
import twinfeed.pricing.life.Verification;

/** Issues quotes into an office's folder, opens issued ones and compares two of them. */
final class IssuedQuotes {
    IssuedQuote issue(Judged judged, Quote draft, PriceBook book, Path office) {
        try {
            return issued(new QuoteFolder(office)
                    .issue(draft, judged.opened().job().getSurvey(), judged.record(), book, Office.VERSION));
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

    List<QuoteDifference> compare(Path before, Path after) {
        return QuoteComparison.compare(open(before).quote(), open(after).quote()).differences().stream()
                .map(one -> new QuoteDifference(
                        one.kind().name().toLowerCase(Locale.ROOT),
                        one.option(),
                        one.section(),
                        one.code(),
                        one.field(),
                        one.before(),
                        one.after()))
                .toList();
    }

    private static IssuedQuote issued(OpenedQuote opened) {
        return new IssuedQuote(
                opened.file(),
                opened.current(),
                opened.digest(),
                opened.verification() == Verification.UNCHANGED,
                opened.verification().text(Locale.ROOT));
    }

    IssuedQuote open(Path file) {
        try {
            return issued(QuoteFolder.open(file));
        } catch (LifeException refused) {
            throw new UnusableException(file + ": " + refused.getMessage(), refused);
        } catch (IOException unreadable) {
            throw new InputException(
                    InputProblem.ofFile(file.toString(), "it cannot be read", "name an issued quote, *.quote"),
                    unreadable);
        }
    }
}
