// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import twinfeed.calculator.formula.ArgumentException;
import twinfeed.units.text.Texts;

/** Why an argument of the circuit's formulas cannot be used, in the language of the program. */
final class FormulaRefusal {
    private static final Texts MESSAGES = new Texts(FormulaRefusal.class, "messages");

    private FormulaRefusal() {}

    /** About a value that was typed. */
    static ArgumentException of(String argument, String typed, String key, Object... values) {
        return new ArgumentException(argument, typed, MESSAGES.toReader(key, values));
    }

    /** About the call as a whole. */
    static ArgumentException ofCall(String key, Object... values) {
        return new ArgumentException(MESSAGES.toReader(key, values));
    }
}
