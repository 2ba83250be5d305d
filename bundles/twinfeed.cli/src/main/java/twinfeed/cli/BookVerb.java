// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.BookReport;
import twinfeed.usecase.OutputCheck;

/** What is in a price list, and what it would change. */
@Command(
        name = "book",
        mixinStandardHelpOptions = true,
        description = {
            "Check a price list, *.csv or *.xlsx, and say what it would change and which codes it lacks.",
            "It can be written as a price book in CSV. A list of which one row is refused is not taken at all."
        })
final class BookVerb implements Callable<Integer> {
    private final CliContext context;

    @Parameters(index = "0", paramLabel = "LIST", description = "The price list, *.csv or *.xlsx.")
    private Path list = Path.of("");

    @Option(names = "--against", paramLabel = "BOOK", description = "The present price book.")
    private @Nullable Path present;

    @Option(names = "--out", paramLabel = "BOOK.csv", description = "Write the list as a price book.")
    private @Nullable Path out;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    BookVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (out != null) {
            OutputCheck.check(
                    out,
                    ".csv",
                    Stream.of(list, present).filter(Objects::nonNull).toList());
        }
        PriceBook old = present == null ? null : context.service().book(present);
        BookReport report = context.service().bookReport(list, old);
        String text = report.text();
        if (out != null && text != null) {
            AtomicFile.write(out, text.getBytes(StandardCharsets.UTF_8));
        }
        if (json) {
            context.json().book(report);
        } else {
            print(report);
        }
        return text == null ? Verbs.UNUSABLE : Verbs.DONE;
    }

    private void print(BookReport report) {
        report.refused().forEach(context.err()::println);
        report.notices().forEach(one -> context.out().println("  " + one));
        line("book.added", report.added());
        for (BookReport.Change change : report.changed()) {
            String what = change.code().isEmpty() ? change.field() : change.code() + " " + change.field();
            context.out().println("~ " + what + ": " + change.before() + " -> " + change.after());
        }
        line("book.removed", report.removed());
        for (BookReport.Lack lack : report.lacking()) {
            context.out()
                    .println("  "
                            + CliContext.TEXTS.format(
                                    CliContext.LOCALE,
                                    "book.lacking." + lack.need().name().toLowerCase(Locale.ROOT),
                                    Map.of("subject", lack.subject(), "codes", String.join(", ", lack.codes()))));
        }
        context.out().println(context.text(report.text() == null ? "book.unusable" : "book.usable"));
        if (out != null && report.text() != null) {
            context.out().println(context.text("written") + " " + out);
        }
    }

    private void line(String key, List<String> codes) {
        if (!codes.isEmpty()) {
            context.out().println(context.text(key) + " (" + codes.size() + ") " + String.join(", ", codes));
        }
    }
}
