// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.model.quote.QuoteState;
import twinfeed.usecase.Languages;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.Visit;

/** What an office does with a quote that is issued. */
abstract class IssuedVerb implements Callable<Integer> {
    private static final PastDay ANSWERED = new PastDay("--date", "the customer answered");
    private static final PastDay CORRECTED = new PastDay("--date", "the decision was taken back");

    /** What the verbs share. */
    final CliContext context;

    @Parameters(index = "0", paramLabel = "QUOTE", description = "An issued quote, *.quote.")
    private Path quote = Path.of("");

    @Option(names = "--json", description = "Print the quote as one JSON document instead of text.")
    private boolean json;

    IssuedVerb(CliContext context) {
        this.context = context;
    }

    /** The quote's file. */
    Path quote() {
        return quote;
    }

    /** Tells where the quote stands now. */
    void tell(IssuedQuote issued, OutputPaths written) {
        tell(context, issued, written);
    }

    /** The same in a language. */
    void tell(CliContext spoken, IssuedQuote issued, OutputPaths written) {
        if (json) {
            spoken.json().quote(issued.quote(), List.of(), written, issued);
        } else {
            context.out()
                    .println(issued.name() + " "
                            + spoken.text("state." + issued.quote().getState().getLiteral()) + " " + issued.file());
            new TextReport(spoken).written(written);
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

        @Option(
                names = "--date",
                paramLabel = "YYYY-MM-DD",
                description =
                        "Day of the answer; today if not given. Of an accepted quote, the day on which the visit was moved.")
        private @Nullable LocalDate date;

        @Option(
                names = "--visit",
                paramLabel = "YYYY-MM-DD HH:MM",
                converter = VisitTime.class,
                description = "When the agreed visit begins, by the clock at the site; with --calendar.")
        private @Nullable LocalDateTime visit;

        @Option(
                names = "--hours",
                paramLabel = "HOURS",
                defaultValue = "4",
                description = "How long the visit is thought to take, 0.25 to 24 hours; 4 if not given.")
        private double hours;

        @Option(
                names = "--calendar",
                paramLabel = "VISIT.ics",
                description =
                        "The visit as an iCalendar entry (RFC 5545) to write; given again for the accepted quote, it moves the visit.")
        private @Nullable Path calendar;

        @Option(names = "--language", paramLabel = "CODE", description = "Language of the entry: en or de.")
        private @Nullable String language;

        @Mixin
        private final FirmArgument firm = new FirmArgument();

        Accept(CliContext context) {
            super(context);
        }

        @Override
        public Integer call() {
            LocalDate on = ANSWERED.of(date, context.today());
            if (visit == null && calendar == null) {
                tell(IssuedQuotes.accept(quote(), option, on), nothing());
                return Verbs.DONE;
            }
            if (visit == null || calendar == null || hours < 0.25 || hours > 24) {
                throw new UnusableException(
                        "--visit, --calendar: a visit needs its time and the file of its entry, and takes 0.25 to 24"
                                + " hours; give both, for example --visit \"2026-12-03 09:00\" --calendar visit.ics",
                        new IllegalArgumentException());
            }
            LocalDate accepted = acceptedBefore();
            check(visit, accepted == null ? on : accepted);
            Locale locale = language == null ? CliContext.LOCALE : Languages.of(language);
            Visit agreed = new Visit(visit, Duration.ofMinutes(Math.round(hours * 60)), calendar);
            CliContext spoken = context.in(locale);
            IssuedQuote told = accepted == null
                    ? IssuedQuotes.accept(quote(), option, on, agreed, firm.beside(null), locale)
                    : IssuedQuotes.moveVisit(quote(), option, on, agreed, firm.beside(null), locale);
            tell(spoken, told, nothing());
            // In a document of JSON the entry has no place; on a screen it is named.
            context.err().println(spoken.text("written") + " " + calendar);
            return Verbs.DONE;
        }

        /** The day on which the quote was accepted already, so that only its visit is moved; null if it was not. */
        private @Nullable LocalDate acceptedBefore() {
            IssuedQuote issued = IssuedQuotes.open(quote());
            return issued.quote().getState() == QuoteState.ACCEPTED
                    ? issued.quote().getDecidedOn()
                    : null;
        }

        private static void check(LocalDateTime visit, LocalDate answered) {
            if (visit.toLocalDate().isBefore(answered)) {
                throw new UnusableException(
                        "--visit " + visit.toString().replace('T', ' ')
                                + ": the visit would be before the day of the answer, " + answered
                                + "; give the day that was agreed, or with --date the day of the answer",
                        new IllegalArgumentException());
            }
        }

        /** Day and time as people write them, with a blank or the T of ISO 8601 between. */
        static final class VisitTime implements CommandLine.ITypeConverter<LocalDateTime> {
            @Override
            public LocalDateTime convert(String text) {
                try {
                    return LocalDateTime.parse(text.strip().replace(' ', 'T'));
                } catch (DateTimeParseException wrong) {
                    throw new CommandLine.TypeConversionException(
                            "'" + text + "' is not a day with a time; write it as 2026-12-03 09:00");
                }
            }
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

        Decline(CliContext context) {
            super(context);
        }

        @Override
        public Integer call() {
            tell(IssuedQuotes.decline(quote(), ANSWERED.of(date, context.today())), nothing());
            return Verbs.DONE;
        }
    }

    /** A decision that was recorded by mistake. */
    @Command(
            name = "reopen",
            mixinStandardHelpOptions = true,
            description = {
                "Take back an acceptance or refusal that was recorded by mistake: the quote is open again, as long as"
                        + " it holds.",
                "What had been recorded, the day and the reason stay on record; the verb issued shows them."
            })
    static final class Reopen extends IssuedVerb {
        @Option(
                names = "--reason",
                required = true,
                paramLabel = "TEXT",
                description = "Why the decision is taken back.")
        private String reason = "";

        @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Day of the correction; today if not given.")
        private @Nullable LocalDate date;

        Reopen(CliContext context) {
            super(context);
        }

        @Override
        public Integer call() {
            tell(IssuedQuotes.correct(quote(), CORRECTED.of(date, context.today()), reason), nothing());
            return Verbs.DONE;
        }
    }

    /** The workbook and PDF once more. */
    @Command(
            name = "reprint",
            mixinStandardHelpOptions = true,
            description = {
                "Write the workbook, PDF and UBL Quotation of an issued quote again, from what was frozen with it.",
                "Photographs are those that were kept in the office's folder when it was issued. What is not as it was"
                        + " issued is refused."
            })
    static final class Reprint extends IssuedVerb {
        @Mixin
        private final FirmArgument firm = new FirmArgument();

        @Option(names = "--out", paramLabel = "QUOTE.xlsx", description = "The workbook to write.")
        private @Nullable Path out;

        @Option(names = "--pdf", paramLabel = "QUOTE.pdf", description = "The PDF to write.")
        private @Nullable Path pdf;

        @Option(
                names = "--ubl",
                paramLabel = "QUOTE.xml",
                description = "The accepted option, before that the first one, as an OASIS UBL 2.1 Quotation.")
        private @Nullable Path ubl;

        @Option(
                names = "--language",
                paramLabel = "CODE",
                description = "Language of the heads, en or de: the one in which the quote was issued.")
        private @Nullable String language;

        Reprint(CliContext context) {
            super(context);
        }

        @Override
        public Integer call() {
            OutputPaths paths = new OutputPaths(out, pdf).withUbl(ubl).sparing(quote(), firm.file());
            if (paths.files().isEmpty()) {
                throw new UnusableException(
                        "--out, --pdf, --ubl: nothing is to be written; name at least one file",
                        new IllegalArgumentException());
            }
            paths.check();
            Locale locale = language == null ? CliContext.LOCALE : Languages.of(language);
            tell(
                    context.in(locale),
                    IssuedQuotes.reprint(context.service(), quote(), firm.beside(null), locale, paths),
                    paths);
            return Verbs.DONE;
        }
    }
}
