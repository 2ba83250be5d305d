// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import twinfeed.calculator.ArgumentException;
import twinfeed.model.io.InputException;
import twinfeed.units.UnitException;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;

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
     * @param office the use cases
     * @param today the date of drafts where none is given
     * @param out for the answer, and nothing else
     * @param err for messages
     */
    public Verbs(TwinfeedService office, LocalDate today, PrintStream out, PrintStream err) {
        this.face = new CliContext(office, today, out, err);
    }

    /** Runs; never throws. */
    public int run(String... arguments) {
        CommandLine line = new CommandLine(new Twinfeed())
                .addSubcommand(new AssessVerb(face))
                .addSubcommand(new OptionsVerb(face))
                .addSubcommand(new QuoteVerb(face))
                .addSubcommand(new BatchVerb(face))
                .addSubcommand(new BookVerb(face))
                .addSubcommand(new FaultsVerb(face))
                .addSubcommand(new CompareVerb(face))
                .addSubcommand(new CalcVerb(face))
                .addSubcommand(new PluginsVerb(face))
                .setOut(new PrintWriter(face.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(face.err(), true, StandardCharsets.UTF_8))
                .setUsageHelpWidth(100)
                .setExecutionExceptionHandler((broken, command, parsed) -> status(broken));
        if (arguments.length == 0) {
            line.usage(face.err());
            return UNUSABLE;
        }
        int status = line.execute(arguments);
        face.office().problems().forEach(problem -> face.err().println(problem.text(CliContext.LOCALE)));
        face.out().flush();
        return face.out().checkError() ? FAULT : status;
    }

    private int status(Exception broken) {
        if (broken instanceof InputException
                || broken instanceof UnusableException
                || broken instanceof ArgumentException
                || broken instanceof UnitException) {
            face.err().println(broken.getMessage());
            return UNUSABLE;
        }
        face.err().println("internal fault: " + broken);
        if (Boolean.getBoolean("twinfeed.debug")) {
            broken.printStackTrace(face.err());
        }
        return FAULT;
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
