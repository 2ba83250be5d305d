// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuoteDifference;

/** Two issued quotes line by line. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = {
            "Two issued quotes, usually revisions of one, line by line.",
            "Exit status 1 if one of them is not as it was issued."
        })
final class CompareVerb implements Callable<Integer> {
    private final CliContext context;

    @Parameters(index = "0", paramLabel = "A", description = "The earlier one, *.quote.")
    private Path before = Path.of("");

    @Parameters(index = "1", paramLabel = "B", description = "The later one, *.quote.")
    private Path after = Path.of("");

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    CompareVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        List<IssuedQuote> quotes =
                Stream.of(before, after).map(IssuedQuotes::open).toList();
        quotes.forEach(this::warn);
        List<QuoteDifference> differences = IssuedQuotes.compare(before, after);
        if (json) {
            context.json().comparison(quotes, differences);
        } else if (differences.isEmpty()) {
            context.out().println(context.text("same"));
        } else {
            differences.forEach(this::print);
        }
        return quotes.stream().allMatch(IssuedQuote::unchanged) ? Verbs.DONE : Verbs.STRICT;
    }

    /** A quote that is not what was issued is compared all the same, but not silently. */
    private void warn(IssuedQuote quote) {
        if (!quote.unchanged()) {
            context.err().println(quote.file() + ": " + quote.verification(Locale.ENGLISH));
        }
    }

    private void print(QuoteDifference one) {
        String where = String.join(
                " / ",
                Stream.of(one.option(), one.section(), one.code(), one.field())
                        .filter(part -> !part.isEmpty())
                        .toList());
        String sign =
                switch (one.kind()) {
                    case "added" -> "+";
                    case "removed" -> "-";
                    default -> "~";
                };
        String arrow = one.before().isEmpty() || one.after().isEmpty() ? "" : " -> ";
        context.out().println(sign + " " + where + ": " + one.before() + arrow + one.after());
    }
}
