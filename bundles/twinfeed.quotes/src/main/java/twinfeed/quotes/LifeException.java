// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import twinfeed.units.text.Texts;

/** Why a step in the life of a quote is refused: what is wrong and what would be right. */
public final class LifeException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    static final Texts MESSAGES = new Texts(LifeException.class, "messages");

    private final String key;
    private final List<String> arguments;

    LifeException(String key, @org.jspecify.annotations.Nullable Object... arguments) {
        this.key = key;
        this.arguments = Arrays.stream(arguments).map(String::valueOf).toList();
    }

    /** Key of what is wrong. */
    public String key() {
        return key;
    }

    /** What is wrong and what would be right. */
    public String message(Locale locale) {
        Object[] values = arguments.toArray();
        return MESSAGES.inOrder(locale, key + ".wrong", values) + "; "
                + MESSAGES.inOrder(locale, key + ".right", values);
    }

    /** The same in the language of the program. */
    @Override
    public String getMessage() {
        return message(Locale.getDefault(Locale.Category.DISPLAY));
    }
}
