// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import twinfeed.usecase.FirmFile;

/** Whose paper it is. */
final class FirmArgument {
    @Option(
            names = "--firm",
            paramLabel = "FILE",
            description = "Whose paper it is: a property file; firm.properties beside the price book if not given.")
    private @Nullable Path firm;

    /** The file, if one is given. */
    @Nullable
    Path file() {
        return firm;
    }

    /** The firm, looked for beside the job's price book where none is given. */
    FirmFile of(JobArguments job) {
        return beside(job.bookFile());
    }

    /** The firm, looked for beside a price book where none is given. */
    FirmFile beside(@Nullable Path book) {
        if (firm != null) {
            return FirmFile.load(firm);
        }
        return book == null ? FirmFile.none() : FirmFile.beside(book);
    }
}
