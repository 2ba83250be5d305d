// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.usecase.IssuedQuote;
import twinfeed.usecase.Languages;
import twinfeed.usecase.OutputPaths;

/** What an office does with a quote that is issued. */
abstract class IssuedVerb implements Callable<Integer> {
    /** What the verbs share. */
    final CliContext face;

    @Parameters(index = "0", paramLabel = "QUOTE", description = "An issued quote, *.quote.")
    private Path quote = Path.of("");

    @Option(names = "--json", description = "Print the quote as one JSON document instead of text.")
    private boolean json;

    IssuedVerb(CliContext face) {
        this.face = face;
    }

    /** The quote's file. */
    Path quote() {
        return quote;
    }

    /** Tells where the quote stands now. */
    void tell(IssuedQuote issued, OutputPaths written) {
        if (json) {
            new JsonReport(face.out()).quote(issued.quote(), written, issued);
        } else {
            face.out()
                    .println(issued.name() + " "
                            + face.text("state." + issued.quote().getState().getLiteral()) + " " + issued.file());
            new TextReport(face).written(written);
        }
    }

    private static OutputPaths nothing() {
        return new OutputPaths(null, null);
    }

    /** The customer's yes. */
    @Command(
            name = "accept",
            mixinStandardHelpOptions = true,
            description = "Record that the customer accepted an option of an issued quote.")
    static final class Accept extends IssuedVerb {
        @Option(
                names = "--option",
                required = true,
                paramLabel = "NAME",
                description = "The option: the heater's id, or \"present\" for the unit that stays.")
        private String option = "";

        @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Day of the answer; today if not given.")
        private @Nullable LocalDate date;

        Accept(CliContext face) {
            super(face);
        }

        @Override
        public Integer call() {
            tell(face.office().accept(quote(), option, date == null ? face.today() : date), nothing());
            return Verbs.DONE;
        }
    }

    /** The customer's no. */
    @Command(
            name = "decline",
            mixinStandardHelpOptions = true,
            description = "Record that the customer declined an issued quote.")
    static final class Decline extends IssuedVerb {
        @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Day of the answer; today if not given.")
        private @Nullable LocalDate date;

        Decline(CliContext face) {
            super(face);
        }

        @Override
        public Integer call() {
            tell(face.office().decline(quote(), date == null ? face.today() : date), nothing());
            return Verbs.DONE;
        }
    }

    /** The workbook and PDF once more. */
    @Command(
            name = "reprint",
            mixinStandardHelpOptions = true,
            description = {
                "Write the workbook and PDF of an issued quote again, from what was frozen with it.",
                "Photographs are no part of what is frozen and are left out. A quote that is not as it was issued is refused."
            })
    static final class Reprint extends IssuedVerb {
        @Mixin
        private final FirmArgument firm = new FirmArgument();

        @Option(names = "--out", paramLabel = "QUOTE.xlsx", description = "The workbook to write.")
        private @Nullable Path out;

        @Option(names = "--pdf", paramLabel = "QUOTE.pdf", description = "The PDF to write.")
        private @Nullable Path pdf;

        @Option(
                names = "--language",
                paramLabel = "CODE",
                description = "Language of the heads, en or de: the one in which the quote was issued.")
        private @Nullable String language;

        Reprint(CliContext face) {
            super(face);
        }

        @Override
        public Integer call() {
            OutputPaths paths = new OutputPaths(out, pdf).sparing(quote(), firm.file());
            paths.check();
            Locale locale = language == null ? CliContext.LOCALE : Languages.of(language);
            tell(face.office().reprint(quote(), firm.beside(null), locale, paths), paths);
            return Verbs.DONE;
        }
    }
}
