// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import twinfeed.usecase.TwinfeedService;

/** The command line on a plain class path, without a framework: for batch engines, benchmarks and tests. */
public final class Main {
    private Main() {}

    /** Runs one command line and ends the process with its status. */
    public static void main(String[] arguments) {
        // Its own words are English whatever the system speaks; so are the messages of the files that it reads.
        Locale.setDefault(Locale.Category.DISPLAY, Locale.ENGLISH);
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        System.exit(new Verbs(TwinfeedService.onClassPath(), today, System.out, System.err).run(arguments));
    }
}
