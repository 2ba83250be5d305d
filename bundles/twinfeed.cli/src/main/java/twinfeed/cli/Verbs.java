// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import twinfeed.usecase.TwinfeedService;

/** Runs one command line. Exit status: 0 done; 1 done, a check does not pass and --strict asked; 2 unusable input; 3 internal fault; 4 done, but a calculator left a check unanswered. */
public final class Verbs {
    static final int DONE = 0;
    static final int STRICT = 1;
    static final int UNUSABLE = 2;
    static final int FAULT = 3;
    static final int INCOMPLETE = 4;

    private final CliContext context;

    /**
     * With the use cases and where to print.
     *
     * @param service the use cases
     * @param today the date of drafts where none is given
     * @param out for the answer, and nothing else
     * @param err for messages
     */
    public Verbs(TwinfeedService service, LocalDate today, PrintStream out, PrintStream err) {
        this.context = new CliContext(service, today, new TerminalStream(out), new TerminalStream(err));
    }

    /** All verbs with their options. */
    CommandLine commands() {
        return new CommandLine(new Twinfeed())
                .addSubcommand(new FormVerb(context))
                .addSubcommand(new ReadVerb(context))
                .addSubcommand(new NewVerb(context))
                .addSubcommand(new AssessVerb(context))
                .addSubcommand(new OptionsVerb(context))
                .addSubcommand(new QuoteVerb(context))
                .addSubcommand(new IssuedVerb.Accept(context))
                .addSubcommand(new IssuedVerb.Decline(context))
                .addSubcommand(new IssuedVerb.Reopen(context))
                .addSubcommand(new IssuedVerb.Reprint(context))
                .addSubcommand(new IssuedListVerb(context))
                .addSubcommand(new BatchVerb(context))
                .addSubcommand(new BookVerb(context))
                .addSubcommand(new FaultsVerb(context))
                .addSubcommand(new CompleteVerb(context))
                .addSubcommand(new NoticeVerb(context))
                .addSubcommand(new PartsVerb(context))
                .addSubcommand(new CompareVerb(context))
                .addSubcommand(new VerifyVerb(context))
                .addSubcommand(new CalcVerb(context))
                .addSubcommand(new PluginsVerb(context))
                .addSubcommand(new HelpVerb(context));
    }

    /** Runs; never throws. */
    public int run(String... arguments) {
        CommandLine line = commands()
                .setOut(new PrintWriter(context.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(context.err(), true, StandardCharsets.UTF_8))
                .setUsageHelpWidth(100)
                .setParameterExceptionHandler((wrong, words) -> misspelt(wrong, arguments))
                .setExecutionExceptionHandler((broken, command, parsed) -> ended(broken, arguments));
        if (arguments.length == 0) {
            line.usage(line.getErr());
            return UNUSABLE;
        }
        int status = line.execute(arguments);
        context.service().problems().forEach(problem -> context.err().println(problem.text(CliContext.LOCALE)));
        if (context.out().checkError()) {
            context.err().println("the answer was not written in full: standard output is closed or full");
            status = Math.max(status, FAULT);
        }
        context.err().flush();
        return status;
    }

    /** Words that no verb understands: with the usage for a person. */
    private int misspelt(CommandLine.ParameterException wrong, String... arguments) {
        if (wantsJson(arguments)) {
            return ended(Failure.unusable(String.valueOf(wrong.getMessage())), arguments);
        }
        context.err().println(wrong.getMessage());
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(
                wrong, wrong.getCommandLine().getErr())) {
            wrong.getCommandLine().usage(wrong.getCommandLine().getErr());
        }
        return UNUSABLE;
    }

    private static boolean wantsJson(String... arguments) {
        return Arrays.asList(arguments).contains("--json");
    }

    private int ended(Exception broken, String... arguments) {
        if (Boolean.getBoolean("twinfeed.debug")) {
            broken.printStackTrace(context.err());
        }
        return ended(Failure.of(broken), arguments);
    }

    /** An answer that has begun is not gone on with by an error. */
    private int ended(Failure failure, String... arguments) {
        if (wantsJson(arguments)) {
            context.json().failure(failure.status(), failure.problems());
        }
        failure.lines().forEach(context.err()::println);
        return failure.status();
    }

    @Command(
            name = "twinfeed",
            mixinStandardHelpOptions = true,
            versionProvider = Version.class,
            synopsisSubcommandLabel = "VERB",
            description = "From the survey of a house to checked heaters, the least costly work and an itemised quote.")
    private static final class Twinfeed {}

    /** What {@code --version} prints. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"twinfeed " + TwinfeedService.VERSION};
        }
    }
}
