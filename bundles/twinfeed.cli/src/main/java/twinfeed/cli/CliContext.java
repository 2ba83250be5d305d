// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.PrintStream;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import twinfeed.calculator.SafeIsolation;
import twinfeed.calculator.Texts;
import twinfeed.usecase.TwinfeedService;

/**
 * What the verbs share. The command line speaks English and writes numbers with a point, whatever the machine's locale, so that
 * scripts read the same everywhere.
 */
record CliContext(TwinfeedService office, LocalDate today, PrintStream out, PrintStream err) {
    static final Locale LOCALE = Locale.ROOT;
    static final Texts TEXTS = new Texts(CliContext.class, "Cli");

    /** The cautions that end every answer. */
    static String cautions() {
        return TEXTS.format(LOCALE, "cautions", Map.of("isolation", SafeIsolation.brief(LOCALE)));
    }

    String text(String key) {
        return TEXTS.get(LOCALE, key);
    }
}
