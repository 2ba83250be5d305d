// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.Locale;
import java.util.Map;
import twinfeed.calculator.Answer;
import twinfeed.calculator.Arguments;
import twinfeed.calculator.Formula;
import twinfeed.calculator.engine.Runner;
import twinfeed.units.text.Texts;

/**
 * A formula with the calculator that publishes it.
 *
 * @param calculator id of the calculator
 * @param texts its messages
 * @param formula the formula
 */
public record NamedFormula(String calculator, Texts texts, Formula formula) {
    /** Its name. */
    public String name() {
        return formula.name();
    }

    /** Computes. */
    public Answer apply(Arguments arguments) {
        return formula.apply(arguments);
    }

    /** A text of the calculator, or of the common ones. */
    public String text(Locale locale, String key) {
        return (texts.has(key) ? texts : Runner.TEXTS).format(locale, key, Map.of());
    }
}
