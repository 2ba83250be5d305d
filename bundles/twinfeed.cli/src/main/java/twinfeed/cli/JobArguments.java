// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.Judged;
import twinfeed.usecase.Opened;

/** The job that a verb works on, and what goes with it. */
final class JobArguments {
    @Parameters(index = "0", paramLabel = "JOB", description = "The job's file, *.job.")
    private Path file = Path.of("");

    @Option(
            names = "--catalogue",
            paramLabel = "FILE",
            description = "Heater catalogue to use instead of the one that the job names.")
    private @Nullable Path catalogue;

    @Option(
            names = "--book",
            paramLabel = "BOOK",
            description = "Price book, by which the least costly work is found; without one the fewest works are.")
    private @Nullable Path book;

    Opened open(Face face) {
        Opened opened = face.office().open(file, catalogue);
        opened.warnings().forEach(face.err()::println);
        return opened;
    }

    @Nullable
    PriceBook book(Face face) {
        return book == null ? null : face.office().book(book);
    }

    Judged judge(Face face, @Nullable String heater) {
        PriceBook prices = book(face);
        return face.office().judge(open(face), prices, heater, Face.LOCALE);
    }
}
