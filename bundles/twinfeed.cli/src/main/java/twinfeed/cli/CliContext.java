// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import twinfeed.calculator.safety.SafeIsolation;
import twinfeed.cli.json.JsonReport;
import twinfeed.units.text.NumberText;
import twinfeed.units.text.Texts;
import twinfeed.usecase.TwinfeedService;

/**
 * What the verbs share. The command line speaks English and writes numbers with a point, whatever the machine's locale, so that
 * scripts read the same everywhere; another language is one that was asked for.
 *
 * @param service the use cases
 * @param today the date of drafts where none is given
 * @param out for the answer, and nothing else
 * @param err for messages
 * @param locale language of the answer
 */
record CliContext(TwinfeedService service, LocalDate today, PrintStream out, PrintStream err, Locale locale) {
    static final Locale LOCALE = Locale.ROOT;
    static final Texts TEXTS = new Texts(CliContext.class, "Cli");

    /** In English. */
    CliContext(TwinfeedService service, LocalDate today, PrintStream out, PrintStream err) {
        this(service, today, out, err, LOCALE);
    }

    /** The same in a language. */
    CliContext in(Locale language) {
        return new CliContext(service, today, out, err, language);
    }

    /** The cautions that end every answer. */
    String cautions() {
        return TEXTS.format(locale, "cautions", Map.of("isolation", SafeIsolation.brief(locale)));
    }

    /** How numbers are written. */
    NumberText numbers() {
        return new NumberText(locale);
    }

    /** An amount of money, without its currency, filled up to the width of its column. */
    String amount(BigDecimal amount) {
        return right(numbers().pointed(amount), 10);
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
    String item(BigDecimal quantity, String unit, String description) {
        return right(numbers().pointed(quantity), 8) + " " + left(unit, 5) + " " + left(description, 58);
    }

    /** What prints an answer as JSON. */
    JsonReport json() {
        return new JsonReport(out, cautions());
    }

    String text(String key) {
        return TEXTS.get(locale, key);
    }
}
