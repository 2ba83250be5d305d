// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import twinfeed.usecase.TwinfeedService;

/** One run of the command line in this process. */
record Run(int status, String out, String err) {
    private static final TwinfeedService OFFICE = TwinfeedService.onClassPath();
    static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    static final Path ROOT = root();
    static final Path DEMO = ROOT.resolve("demo");

    static Run of(Object... arguments) {
        return on(DAY, arguments);
    }

    /** The same on another day. */
    static Run on(LocalDate day, Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = arguments[i].toString();
        }
        int status = new Verbs(OFFICE, day, stream(out), stream(err)).run(words);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** What the verbs share, printing to this process's own streams. */
    static CliContext english() {
        return new CliContext(OFFICE, DAY, System.out, System.err);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private static Path root() {
        Path folder = Path.of("").toAbsolutePath();
        while (!java.nio.file.Files.isDirectory(folder.resolve("demo"))) {
            folder = folder.getParent();
        }
        return folder;
    }
}
