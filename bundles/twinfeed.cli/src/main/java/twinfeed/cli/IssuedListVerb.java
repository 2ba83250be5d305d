// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.cli.json.IssuedEntry;
import twinfeed.model.io.InputException;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;

/** The issued quotes of an office, and where each stands. */
@Command(
        name = "issued",
        mixinStandardHelpOptions = true,
        description = {
            "The issued quotes of an office's folder, or one of them: for whom, where it stands, what it comes to, and"
                    + " decisions that were taken back.",
            "Exit status 1 if one of them cannot be read or is not as it was issued."
        })
final class IssuedListVerb implements Callable<Integer> {

    private final CliContext context;

    @Parameters(
            index = "0",
            paramLabel = "FOLDER|QUOTE",
            description = "An office's folder, or an issued quote, *.quote.")
    private Path place = Path.of("");

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "The day on which a quote still holds or has lapsed; today if not given.")
    private @Nullable LocalDate date;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    IssuedListVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        LocalDate day = date == null ? context.today() : date;
        boolean folder = Files.isDirectory(place);
        List<IssuedEntry> entries = new ArrayList<>();
        boolean sound = true;
        for (Path file : folder ? IssuedQuotes.in(place) : List.of(place)) {
            try {
                IssuedEntry entry = new IssuedEntry(IssuedQuotes.open(file), IssuedQuotes.corrections(file));
                sound &= entry.issued().unchanged();
                entries.add(entry);
            } catch (InputException | UnusableException unreadable) {
                // One bad file must not hide the others.
                if (!folder) {
                    throw unreadable;
                }
                sound = false;
                context.err().println(unreadable.getMessage());
            }
        }
        if (json) {
            context.json().issued(entries, day);
        } else {
            entries.forEach(entry -> print(entry, day));
            if (entries.isEmpty()) {
                context.out().println(context.text("issued.none"));
            }
        }
        return sound ? Verbs.DONE : Verbs.STRICT;
    }

    private void print(IssuedEntry entry, LocalDate day) {
        IssuedQuote issued = entry.issued();
        Quote quote = issued.quote();
        String totals = quote.getOptions().stream()
                .filter(each -> quote.getChosen() == null || quote.getChosen().equals(each.getName()))
                .map(each -> each.getName() + " " + each.getTotal() + " " + quote.getCurrency())
                .collect(Collectors.joining(", "));
        String who = issued.site().isEmpty() ? issued.customer() : issued.customer() + ", " + issued.site();
        context.out()
                .println(issued.name() + "  " + quote.getDate() + " - " + quote.getValidUntil() + "  "
                        + context.text("stands." + issued.stateOn(day).getLiteral())
                        + (quote.getDecidedOn() == null ? "" : " " + quote.getDecidedOn()) + "  " + who + "  "
                        + totals);
        if (!issued.unchanged()) {
            context.err().println(issued.file() + ": " + issued.verification(Locale.ENGLISH));
        }
        entry.corrections().forEach(each -> context.out()
                .println("    " + context.text("stands." + each.was().getLiteral()) + " " + each.decidedOn()
                        + (each.chosen() == null ? "" : " (" + each.chosen() + ")") + ", "
                        + context.text("issued.takenBack") + " " + each.on() + ": " + each.reason()));
    }
}
