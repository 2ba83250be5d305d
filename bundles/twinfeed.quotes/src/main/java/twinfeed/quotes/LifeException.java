// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.nio.file.Path;
import java.util.ArrayList;
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
        return message(locale, arguments);
    }

    private String message(Locale locale, List<String> values) {
        return MESSAGES.inOrder(locale, key + ".wrong", values.toArray()) + "; "
                + MESSAGES.inOrder(locale, key + ".right", values.toArray());
    }

    /** The same about a file, which is named once, with its whole path. */
    public String message(Path file) {
        Locale locale = Locale.getDefault(Locale.Category.DISPLAY);
        String name = String.valueOf(file.getFileName());
        if (arguments.isEmpty() || !arguments.get(0).equals(name)) {
            return file + ": " + message(locale);
        }
        List<String> values = new ArrayList<>(arguments);
        values.set(0, file.toString());
        return message(locale, values);
    }

    /** The same in the language of the program. */
    @Override
    public String getMessage() {
        return message(Locale.getDefault(Locale.Category.DISPLAY));
    }
}
