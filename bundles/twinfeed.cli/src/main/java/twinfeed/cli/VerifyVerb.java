// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.usecase.quote.FolderCheck;
import twinfeed.usecase.quote.IssuedQuotes;

/** Whether issued quotes are what was issued. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = {
            "Look whether issued quotes are as they were issued.",
            "In an office's folder also whether numbers or revisions are missing. Exit status 1 if anything is not as"
                    + " it should be."
        })
final class VerifyVerb implements Callable<Integer> {
    private final CliContext context;

    @Parameters(
            index = "0",
            paramLabel = "FILE|FOLDER",
            description = "An issued quote, *.quote, or an office's folder.")
    private Path place = Path.of("");

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    VerifyVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        FolderCheck check = IssuedQuotes.verify(place);
        if (json) {
            context.json().verification(check);
        } else {
            print(check);
        }
        return check.sound() ? Verbs.DONE : Verbs.STRICT;
    }

    private void print(FolderCheck check) {
        check.quotes().forEach(quote -> context.out()
                .println(quote.status().equals("unreadable") ? quote.text() : quote.file() + ": " + quote.text()));
        check.missing()
                .forEach(one -> context.out().println(one.name() + ": " + context.text("missing." + one.kind())));
        context.out().println(context.text(check.sound() ? "verify.sound" : "verify.unsound"));
    }
}
