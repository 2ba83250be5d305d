// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import twinfeed.quotes.FolderVerification;
import twinfeed.quotes.OpenedQuote;
import twinfeed.quotes.QuoteLife;

/**
 * Whether issued quotes are as they were issued, and none is missing.
 *
 * @param sound whether all is well
 * @param quotes each quote, by number and revision
 * @param missing what is not there
 */
public record FolderCheck(boolean sound, List<Quote> quotes, List<Missing> missing) {
    /**
     * A quote.
     *
     * @param file its file
     * @param name its number and revision; empty if it cannot be read
     * @param status {@code unchanged}, {@code changed}, {@code unknown} (no digest beside it) or {@code unreadable}
     * @param text the same in words
     */
    public record Quote(Path file, String name, String status, String text) {}

    /**
     * A quote that is not there.
     *
     * @param name number, or number and revision, of a photograph with its name too
     * @param kind {@code quote} (the number was taken), {@code number}, {@code revision} or {@code photograph}
     */
    public record Missing(String name, String kind) {}

    public FolderCheck {
        quotes = List.copyOf(quotes);
        missing = List.copyOf(missing);
    }

    static FolderCheck of(FolderVerification found) {
        return new FolderCheck(
                found.sound(),
                found.quotes().stream().map(FolderCheck::quote).toList(),
                found.missing().stream()
                        .map(one -> new Missing(one.name(), one.kind().name().toLowerCase(Locale.ROOT)))
                        .toList());
    }

    private static Quote quote(FolderVerification.Checked one) {
        OpenedQuote opened = one.opened();
        return opened == null
                ? new Quote(one.file(), "", "unreadable", one.problem())
                : new Quote(
                        one.file(),
                        QuoteLife.name(opened.current()),
                        opened.verification().name().toLowerCase(Locale.ROOT),
                        opened.verification().text(Locale.ROOT));
    }
}
