// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.usecase.Languages;
import twinfeed.usecase.OpenedJob;

/** The job that a verb works on, with its catalogue. */
final class JobFileArguments {
    @Parameters(index = "0", paramLabel = "JOB", description = "The job's file, *.job.")
    private Path file = Path.of("");

    @Option(
            names = "--catalogue",
            paramLabel = "FILE",
            description = "Heater catalogue to use instead of the one that the job names.")
    private @Nullable Path catalogue;

    @Option(
            names = "--language",
            paramLabel = "CODE",
            description = "Language of the answer and of what is written: en or de.")
    private @Nullable String language;

    /** Language of the texts. */
    Locale locale() {
        return language == null ? CliContext.LOCALE : Languages.of(language);
    }

    /** Files that are read by name: the job, and its catalogue if one is given. */
    List<Path> inputs() {
        return Stream.of(Optional.of(file), Optional.ofNullable(catalogue))
                .flatMap(Optional::stream)
                .toList();
    }

    /** The job's file. */
    Path file() {
        return file;
    }

    /** The catalogue that is used instead of the job's own, if one is given. */
    @Nullable
    Path catalogue() {
        return catalogue;
    }

    OpenedJob open(CliContext context) {
        OpenedJob opened = context.service().open(file, catalogue, context.today());
        opened.warnings().forEach(context.err()::println);
        return opened;
    }
}
