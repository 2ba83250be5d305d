// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.usecase.Languages;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.completion.PartsListWriter.Part;
import twinfeed.usecase.completion.PartsToPack;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;

/** The parts of an accepted quote. */
@Command(
        name = "parts",
        mixinStandardHelpOptions = true,
        description = {
            "The parts to pack for an accepted quote, by generic part, like ones added up.",
            "Exit status 2 if the customer has not accepted it."
        })
final class PartsVerb implements Callable<Integer> {
    private final CliContext context;

    @Parameters(index = "0", paramLabel = "QUOTE", description = "An issued quote, *.quote.")
    private Path quote = Path.of("");

    @Mixin
    private final FirmArgument firm = new FirmArgument();

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Day of the list; today if not given.")
    private @Nullable LocalDate date;

    @Option(names = "--language", paramLabel = "CODE", description = "Language of the list: en or de.")
    private @Nullable String language;

    @Option(names = "--pdf", paramLabel = "LIST.pdf", description = "Write the list as PDF.")
    private @Nullable Path pdf;

    @Option(names = "--out", paramLabel = "LIST.xlsx", description = "Write the list as a workbook.")
    private @Nullable Path out;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    PartsVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        OutputPaths files = new OutputPaths(out, pdf).sparing(quote, firm.file());
        files.check();
        Locale locale = language == null ? CliContext.LOCALE : Languages.of(language);
        IssuedQuote issued = IssuedQuotes.open(quote);
        List<Part> parts = PartsToPack.of(issued);
        PartsToPack.write(issued, firm.beside(null), date == null ? context.today() : date, locale, files);
        CliContext spoken = context.in(locale);
        if (json) {
            spoken.json().parts(issued.name(), parts);
        } else {
            parts.forEach(each -> context.out()
                    .println("  [ ] " + spoken.item(each.quantity(), each.unit(), each.description()) + " "
                            + each.code()));
            new TextReport(spoken).written(files);
        }
        return Verbs.DONE;
    }
}
