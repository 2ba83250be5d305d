// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.Locale;
import twinfeed.units.text.Texts;

/**
 * What the devices, methods and cables of a rule set are called in one language: as the messages say it for those of the rule sets that
 * come with the program, otherwise in the rule set's own words.
 */
public final class RuleTitles {
    /** The messages: {@code device.KEY}, {@code method.RULESET.KEY}, {@code cable.KEY}. */
    public static final Texts TEXTS = new Texts(RuleTitles.class, "Rules");

    private final RuleSet rules;
    private final Locale locale;

    /** Of one rule set. */
    public RuleTitles(RuleSet rules, Locale locale) {
        this.rules = rules;
        this.locale = locale;
    }

    /** The kind of a protective device; the key itself where the rule set does not know it. */
    public String device(String key) {
        return rules.devices()
                .find(key)
                .map(kind -> named("device." + key, kind.title()))
                .orElse(key);
    }

    /** A reference method; the key itself where the rule set does not know it. */
    public String method(String key) {
        return rules.method(key).map(this::of).orElse(key);
    }

    private String of(Method method) {
        return named(key(rules, method), method.title());
    }

    /** Key of the message for a method. */
    public static String key(RuleSet rules, Method method) {
        return "method." + rules.id() + "." + method.key();
    }

    /** A kind of cable; the key itself where there are no words for it. */
    public String cable(String key) {
        String title = TEXTS.find(locale, "cable." + key);
        return title == null ? key : title;
    }

    /** A rule set from elsewhere may call something else by the same key: its own words are kept then. */
    private String named(String key, String title) {
        return title.equals(TEXTS.find(Locale.ROOT, key)) ? TEXTS.get(locale, key) : title;
    }
}
