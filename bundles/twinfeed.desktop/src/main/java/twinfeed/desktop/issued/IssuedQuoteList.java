// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import twinfeed.desktop.session.JobServices;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;

/**
 * What stands in an office's folder.
 *
 * @param quotes the issued quotes, by number and revision
 * @param troubles files that cannot be read, each with the reason
 */
record IssuedQuoteList(List<IssuedQuote> quotes, List<String> troubles) {
    IssuedQuoteList {
        quotes = List.copyOf(quotes);
        troubles = List.copyOf(troubles);
    }

    /** Reads a folder; never throws, for one bad file must not hide the others. */
    static IssuedQuoteList read(JobServices services, Path office) {
        List<IssuedQuote> quotes = new ArrayList<>();
        List<String> troubles = new ArrayList<>();
        try {
            for (Path file : IssuedQuotes.in(office)) {
                try {
                    quotes.add(IssuedQuotes.open(file));
                } catch (RuntimeException unreadable) {
                    troubles.add(String.valueOf(unreadable.getMessage()));
                }
            }
        } catch (RuntimeException unreadable) {
            troubles.add(String.valueOf(unreadable.getMessage()));
        }
        return new IssuedQuoteList(quotes, troubles);
    }
}
