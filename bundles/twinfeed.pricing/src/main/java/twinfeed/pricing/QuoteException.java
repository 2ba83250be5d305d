// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import twinfeed.units.text.Texts;

/** Why no quote can be made: what is wrong and what would be right, in the reader's language. */
public final class QuoteException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    static final Texts MESSAGES = new Texts(QuoteException.class, "messages");

    private final String key;
    private final List<String> arguments;

    /**
     * With a key of the messages.
     *
     * @param key key without its ending {@code .wrong} or {@code .right}
     * @param arguments values that the message names
     */
    QuoteException(String key, Object... arguments) {
        this.key = key;
        this.arguments = Arrays.stream(arguments).map(String::valueOf).toList();
    }

    /** Key of what is wrong. */
    public String key() {
        return key;
    }

    /** What is wrong. */
    public String wrong(Locale locale) {
        return MESSAGES.inOrder(locale, "trouble." + key + ".wrong", arguments.toArray());
    }

    /** What would be right. */
    public String right(Locale locale) {
        return MESSAGES.inOrder(locale, "trouble." + key + ".right", arguments.toArray());
    }

    /** Both, in the language of the program. */
    @Override
    public String getMessage() {
        return message(Locale.getDefault(Locale.Category.DISPLAY));
    }

    /** Both. */
    public String message(Locale locale) {
        return wrong(locale) + "; " + right(locale);
    }
}
