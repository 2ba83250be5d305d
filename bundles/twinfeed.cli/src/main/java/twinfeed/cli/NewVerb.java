// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.usecase.guide.FileKind;
import twinfeed.usecase.guide.NewFiles;

/** A first file of a kind. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = {
            "Write a first file of a kind, to be filled in: a job, a list of dwellings, a price book, a catalogue, or a firm's folder with all that it needs.",
            "No file is ever replaced. What a kind of file may hold is said by the verb help."
        })
final class NewVerb implements Callable<Integer> {
    private final CliContext context;

    @Parameters(index = "0", paramLabel = "KIND", description = "job, dwellings, price-book, catalogue or firm.")
    private String kind = "";

    @Option(
            names = "--out",
            required = true,
            paramLabel = "PATH",
            description = "The file to write; for firm the folder.")
    private Path out = Path.of("");

    NewVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        FileKind known = FileKind.of(kind, FileKind.begunKeys());
        new NewFiles(context.service(), context.today()).write(known, out).forEach(file -> context.out()
                .println(context.text("written") + " " + file));
        return Verbs.DONE;
    }
}
