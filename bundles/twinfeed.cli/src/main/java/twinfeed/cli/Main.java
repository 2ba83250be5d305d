// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import twinfeed.usecase.TwinfeedService;

/** The command line on a plain class path, without a framework: for batch engines, benchmarks and tests. */
public final class Main {
    private Main() {}

    /** Runs one command line and ends the process with its status. */
    public static void main(String[] arguments) {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        System.exit(new Verbs(TwinfeedService.onClassPath(), today, System.out, System.err).run(arguments));
    }
}
