// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteState;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.JobSheetFiles;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.refusal.Refusals;

/** The parts to be packed for the option that a customer accepted. */
public final class PartsToPack {
    private PartsToPack() {}

    /**
     * The parts of the option that the customer accepted, like ones added up.
     *
     * @throws UnusableException if the quote was not accepted
     */
    public static List<PartsListWriter.Part> of(IssuedQuote issued) {
        return PartsListWriter.parts(accepted(issued));
    }

    /**
     * Writes the list of those parts.
     *
     * @throws UnusableException if the quote was not accepted
     * @throws twinfeed.model.io.InputException if a file cannot be written
     */
    public static void write(IssuedQuote issued, FirmFile firm, LocalDate day, Locale locale, OutputPaths out) {
        new JobSheetFiles()
                .add(
                        PartsListWriter.write(
                                issued.name(),
                                IssuedQuotes.survey(issued.file()),
                                accepted(issued),
                                firm.firm(),
                                TwinfeedService.VERSION,
                                day,
                                locale),
                        out)
                .write();
    }

    private static QuoteOption accepted(IssuedQuote issued) {
        Quote quote = issued.quote();
        if (quote.getState() != QuoteState.ACCEPTED || quote.getChosen() == null) {
            throw new UnusableException(
                    issued.file() + ": " + Refusals.text("parts.accepted", issued.name()),
                    new IllegalArgumentException(issued.name()));
        }
        return quote.getOptions().stream()
                .filter(option -> quote.getChosen().equals(option.getName()))
                .findFirst()
                .orElseThrow(() -> new UnusableException(
                        issued.file() + ": " + Refusals.text("parts.option", issued.name(), quote.getChosen()),
                        new IllegalArgumentException(quote.getChosen())));
    }
}
