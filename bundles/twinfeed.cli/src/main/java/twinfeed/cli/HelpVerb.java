// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import twinfeed.usecase.guide.FileGuide;
import twinfeed.usecase.guide.FileKind;

/** What a kind of file may hold, or what a verb does. */
@Command(
        name = "help",
        mixinStandardHelpOptions = true,
        description = {
            "What a kind of file may hold: every value with its meaning, its unit or words and its usual range.",
            "With the name of a verb, its options; without a name, all verbs and kinds of files."
        })
final class HelpVerb implements Callable<Integer> {
    private final CliContext context;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "KIND|VERB",
            description =
                    "job, catalogue, price-book, dwellings, firm, texts or quote; or a verb. A kind of file goes before a verb of the same name.")
    private @Nullable String name;

    HelpVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        CommandLine all = Objects.requireNonNull(spec).commandLine().getParent();
        CommandLine verb = name == null ? all : all.getSubcommands().get(name);
        String kind = name;
        if (kind != null && (verb == null || FileKind.keys().contains(kind))) {
            new FileGuide(context.service(), Locale.ROOT)
                    .page(FileKind.of(kind, FileKind.keys()))
                    .forEach(context.out()::println);
        } else {
            // The program's own lines: a stream that sets in what a file's text begins anew would move them.
            Objects.requireNonNull(verb).usage(all.getOut());
            if (kind == null) {
                context.out().println(context.text("help.kinds") + " " + String.join(", ", FileKind.keys()));
            }
        }
        return Verbs.DONE;
    }
}
