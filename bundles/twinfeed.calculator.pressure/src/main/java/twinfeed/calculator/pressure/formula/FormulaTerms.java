// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.formula;

import java.util.Locale;
import twinfeed.calculator.Parameter;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.units.Kind;

/** What the formulas share. */
final class FormulaTerms {
    /** More than any supply or switch of a house, Pa. */
    static final double MOST_PA = 50e5;

    static final Parameter TEMPERATURE = Parameter.optional("temperature", Kind.TEMPERATURE, 10, 0, 100);

    private FormulaTerms() {}

    /** The engineering's name of a trouble as a key: {@code SUPPLY_TOO_WEAK} is {@code supplyTooWeak}. */
    static String key(FailureReason trouble) {
        StringBuilder key = new StringBuilder();
        for (String word : trouble.name().toLowerCase(Locale.ROOT).split("_")) {
            key.append(key.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return key.toString();
    }
}
