// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.units.text.Texts;

/** Why data files of rules or of the fault-finding cannot be used, in the language of the program. */
final class RuleRefusal {
    private static final Texts MESSAGES = new Texts(RuleRefusal.class, "messages");

    private RuleRefusal() {}

    static String text(String key, Object... arguments) {
        return MESSAGES.inOrder(Locale.getDefault(Locale.Category.DISPLAY), key, arguments);
    }

    static IllegalArgumentException of(@Nullable Throwable cause, String key, Object... arguments) {
        return new IllegalArgumentException(text(key, arguments), cause);
    }

    static IllegalArgumentException of(String key, Object... arguments) {
        return of(null, key, arguments);
    }
}
