// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Translation;
import twinfeed.calculator.circuit.formula.FormulaArguments;
import twinfeed.calculator.circuit.survey.MethodTitle;
import twinfeed.calculator.rules.Method;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.units.text.Phrase;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(CircuitCalculator.class, "Circuit");
        Translation.assertGerman(FormulaArguments.class, "messages");
    }

    @Test
    void methodsAreInTheReadersLanguage() {
        for (String id : List.of("bs7671-2018-a2", "iec60364-5-52")) {
            RuleSet rules = RuleSets.find(id).orElseThrow();
            for (String key : rules.methods()) {
                Method method = rules.method(key).orElseThrow();
                assertEquals(
                        Phrase.of("method." + id + "." + key),
                        MethodTitle.of(new CircuitCalculator().descriptor().texts(), rules, method),
                        method.title());
            }
        }
    }
}
