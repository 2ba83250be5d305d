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

    private final CliContext face;

    /**
     * With the use cases and where to print.
     *
     * @param service the use cases
     * @param today the date of drafts where none is given
     * @param out for the answer, and nothing else
     * @param err for messages
     */
    public Verbs(TwinfeedService service, LocalDate today, PrintStream out, PrintStream err) {
        this.face = new CliContext(service, today, new TerminalStream(out), new TerminalStream(err));
    }

    /** All verbs with their options. */
    CommandLine commands() {
        return new CommandLine(new Twinfeed())
                .addSubcommand(new FormVerb(face))
                .addSubcommand(new ReadVerb(face))
                .addSubcommand(new NewVerb(face))
                .addSubcommand(new AssessVerb(face))
                .addSubcommand(new OptionsVerb(face))
                .addSubcommand(new QuoteVerb(face))
                .addSubcommand(new IssuedVerb.Accept(face))
                .addSubcommand(new IssuedVerb.Decline(face))
                .addSubcommand(new IssuedVerb.Reopen(face))
                .addSubcommand(new IssuedVerb.Reprint(face))
                .addSubcommand(new IssuedListVerb(face))
                .addSubcommand(new BatchVerb(face))
                .addSubcommand(new BookVerb(face))
                .addSubcommand(new FaultsVerb(face))
                .addSubcommand(new CompleteVerb(face))
                .addSubcommand(new NoticeVerb(face))
                .addSubcommand(new PartsVerb(face))
                .addSubcommand(new CompareVerb(face))
                .addSubcommand(new VerifyVerb(face))
                .addSubcommand(new CalcVerb(face))
                .addSubcommand(new PluginsVerb(face))
                .addSubcommand(new HelpVerb(face));
    }

    /** Runs; never throws. */
    public int run(String... arguments) {
        CommandLine line = commands()
                .setOut(new PrintWriter(face.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(face.err(), true, StandardCharsets.UTF_8))
                .setUsageHelpWidth(100)
                .setParameterExceptionHandler((wrong, words) -> misspelt(wrong, arguments))
                .setExecutionExceptionHandler((broken, command, parsed) -> ended(broken, arguments));
        if (arguments.length == 0) {
            line.usage(face.err());
            face.err().flush();
            return UNUSABLE;
        }
        int status = line.execute(arguments);
        face.service().problems().forEach(problem -> face.err().println(problem.text(CliContext.LOCALE)));
        if (face.out().checkError()) {
            face.err().println("the answer was not written in full: standard output is closed or full");
            status = Math.max(status, FAULT);
        }
        face.err().flush();
        return status;
    }

    /** Words that no verb understands: with the usage for a person. */
    private int misspelt(CommandLine.ParameterException wrong, String... arguments) {
        if (wantsJson(arguments)) {
            return ended(Failure.unusable(String.valueOf(wrong.getMessage())), arguments);
        }
        face.err().println(wrong.getMessage());
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(
                wrong, wrong.getCommandLine().getErr())) {
            wrong.getCommandLine().usage(face.err());
        }
        return UNUSABLE;
    }

    private static boolean wantsJson(String... arguments) {
        return Arrays.asList(arguments).contains("--json");
    }

    private int ended(Exception broken, String... arguments) {
        if (Boolean.getBoolean("twinfeed.debug")) {
            broken.printStackTrace(face.err());
        }
        return ended(Failure.of(broken), arguments);
    }

    /** An answer that has begun is not gone on with by an error. */
    private int ended(Failure failure, String... arguments) {
        if (wantsJson(arguments)) {
            face.json().failure(failure.status(), failure.problems());
        }
        failure.lines().forEach(face.err()::println);
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
