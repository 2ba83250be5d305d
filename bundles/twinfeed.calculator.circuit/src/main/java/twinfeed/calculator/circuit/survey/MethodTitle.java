// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.Locale;
import twinfeed.calculator.rules.Method;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleTitles;
import twinfeed.units.text.Phrase;
import twinfeed.units.text.Texts;

/** What a reference method is called. */
public final class MethodTitle {
    private MethodTitle() {}

    /**
     * A method's title in the reader's language where the messages have it for this rule set, otherwise in the rule set's own words.
     *
     * @param texts messages with the keys {@code method.RULESET.METHOD}
     */
    public static Object of(Texts texts, RuleSet rules, Method method) {
        String key = RuleTitles.key(rules, method);
        return method.title().equals(texts.find(Locale.ROOT, key)) ? Phrase.of(key) : method.title();
    }
}
