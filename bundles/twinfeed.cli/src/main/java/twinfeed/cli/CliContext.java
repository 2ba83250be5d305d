// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import twinfeed.calculator.SafeIsolation;
import twinfeed.cli.json.JsonReport;
import twinfeed.units.text.NumberText;
import twinfeed.units.text.Texts;
import twinfeed.usecase.TwinfeedService;

/**
 * What the verbs share. The command line speaks English and writes numbers with a point, whatever the machine's locale, so that
 * scripts read the same everywhere.
 */
record CliContext(TwinfeedService service, LocalDate today, PrintStream out, PrintStream err) {
    static final Locale LOCALE = Locale.ROOT;
    static final NumberText NUMBERS = new NumberText(LOCALE);
    static final Texts TEXTS = new Texts(CliContext.class, "Cli");

    /** The cautions that end every answer. */
    static String cautions() {
        return TEXTS.format(LOCALE, "cautions", Map.of("isolation", SafeIsolation.brief(LOCALE)));
    }

    /** A text filled up to a width with blanks behind it. */
    static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    /** A text filled up to a width with blanks before it. */
    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }

    /** An item of a list in columns: how much, in what unit, and what it is. */
    static String item(BigDecimal quantity, String unit, String description) {
        return right(quantity.toPlainString(), 8) + " " + left(unit, 5) + " " + left(description, 58);
    }

    /** What prints an answer as JSON. */
    JsonReport json() {
        return new JsonReport(out, cautions());
    }

    String text(String key) {
        return TEXTS.get(LOCALE, key);
    }
}
