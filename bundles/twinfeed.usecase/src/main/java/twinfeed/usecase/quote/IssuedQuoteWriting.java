// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.util.List;
import java.util.Locale;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.io.StagedFiles;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.refusal.Refusals;

/**
 * The workbook and PDF of a quote that is about to be issued: everything about them that can fail is tried, and their room on the
 * disk is taken, before a number is. Closed without {@link #write} it leaves nothing behind.
 */
public final class IssuedQuoteWriting implements AutoCloseable {
    /** As long as a digest. */
    private static final String NO_DIGEST = "0".repeat(64);

    private final AssessedJob judged;
    private final FirmFile firm;
    private final Locale locale;
    private final OutputPaths out;
    private final StagedFiles staged;

    IssuedQuoteWriting(AssessedJob judged, Quote draft, FirmFile firm, Locale locale, OutputPaths out) {
        out.check();
        this.judged = judged;
        this.firm = firm;
        this.locale = locale;
        this.out = out;
        this.staged = QuotingService.files(judged, draft, NO_DIGEST, firm, locale, out)
                .reserve();
    }

    /**
     * Writes them with number and digest.
     *
     * @throws UnusableException if one cannot be written all the same; it says that the quote is issued, and where it is
     */
    public void write(IssuedQuote issued) {
        try {
            QuotingService.files(judged, issued.quote(), issued.digest(), firm, locale, out)
                    .writeTo(staged);
        } catch (InputException | UnusableException failed) {
            InputProblem first = failed instanceof InputException input
                    ? input.problems().get(0)
                    : InputProblem.ofFile("", String.valueOf(failed.getMessage()), "");
            InputProblem problem =
                    Refusals.ofFile(first.file(), "issued.all.same", first.wrong(), issued.name(), issued.file());
            throw new UnusableException(problem.toString(), List.of(problem), failed);
        }
    }

    /** The files that will be written. */
    public List<java.nio.file.Path> files() {
        return out.files();
    }

    @Override
    public void close() {
        staged.close();
    }
}
