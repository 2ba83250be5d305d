// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import org.jspecify.annotations.Nullable;
import twinfeed.units.text.Texts;

/** Why the data files of rules cannot be used, in the language of the program. */
final class RuleRefusal {
    private static final Texts MESSAGES = new Texts(RuleRefusal.class, "messages");

    private RuleRefusal() {}

    static String text(String key, Object... arguments) {
        return MESSAGES.toReader(key, arguments);
    }

    static IllegalArgumentException of(@Nullable Throwable cause, String key, Object... arguments) {
        return new IllegalArgumentException(text(key, arguments), cause);
    }

    static IllegalArgumentException of(String key, Object... arguments) {
        return of(null, key, arguments);
    }
}
