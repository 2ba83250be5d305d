// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.crash;

import java.time.LocalDate;
import twinfeed.cli.Verbs;
import twinfeed.usecase.TwinfeedService;

/** One command line as a program of its own; the arguments are those of {@code twinfeed}. */
public final class OneRun {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private OneRun() {}

    /** Runs it and ends with its status. */
    public static void main(String[] arguments) {
        System.exit(new Verbs(TwinfeedService.onClassPath(), DAY, System.out, System.err).run(arguments));
    }
}
