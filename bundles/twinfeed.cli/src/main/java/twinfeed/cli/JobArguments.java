// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.OpenedJob;

/** The job that a verb works on, and the price book if there is one. */
final class JobArguments {
    @Mixin
    private final JobFileArguments job = new JobFileArguments();

    @Option(
            names = "--book",
            paramLabel = "BOOK",
            description =
                    "Price book, *.csv or *.xlsx, by which the least costly work is found; without one the fewest works are.")
    private @Nullable Path book;

    /** Language of the texts. */
    Locale locale() {
        return job.locale();
    }

    /** The job's own arguments. */
    JobFileArguments file() {
        return job;
    }

    OpenedJob open(CliContext context) {
        return job.open(context);
    }

    /** File of the price book, if one is given. */
    @Nullable
    Path bookFile() {
        return book;
    }

    @Nullable
    PriceBook book(CliContext context) {
        return book == null ? null : context.service().book(book);
    }

    AssessedJob judge(CliContext context, @Nullable String heater) {
        PriceBook prices = book(context);
        return context.service().judge(open(context), prices, heater, locale());
    }
}
