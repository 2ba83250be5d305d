// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.pricing.book.PriceBookCsv;
import twinfeed.pricing.book.PriceBookException;

/** Reads a price book, or says in the common form what is wrong with it. */
final class BookOpening {
    PriceBook open(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new InputException(
                    InputProblem.ofFile(file.toString(), "there is no such file", "name a price book, *.csv"));
        }
        try {
            return PriceBookCsv.read(file).bookOrThrow();
        } catch (PriceBookException refused) {
            throw new UnusableException(refused.report().refusals(Locale.ROOT), refused);
        } catch (IOException unreadable) {
            throw new InputException(
                    InputProblem.ofFile(
                            file.toString(), "it cannot be read", "check its rights and that it is text in UTF-8"),
                    unreadable);
        }
    }
}
