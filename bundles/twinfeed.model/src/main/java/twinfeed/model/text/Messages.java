// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Locale.Category;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/**
 * Messages of one package: UTF-8 files {@code messages.properties}, {@code messages_de.properties}, read with the loader of a class
 * there, so that OSGi finds them whoever asks. Read only when something is to be said, so that a good file costs nothing. Arguments are
 * written as they are given: numbers come as text, because their decimals carry meaning.
 */
public final class Messages {
    /** Without a fallback to the machine's own language: the same request gives the same words everywhere. */
    private static final Control NO_FALLBACK = Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);

    private final Class<?> anchor;
    private final String base;

    /** The messages {@code messages.properties} in the package of a class. */
    public Messages(Class<?> anchor) {
        this.anchor = anchor;
        this.base = anchor.getPackageName() + ".messages";
    }

    /**
     * A message in the language of the display.
     *
     * @param key its key
     * @param arguments what stands for {@code {0}}, {@code {1}}, ...; numbers come as text with a decimal point
     * @throws java.util.MissingResourceException if there is no such message
     */
    public String get(String key, String... arguments) {
        String pattern = bundle(Locale.getDefault(Category.DISPLAY)).getString(key);
        return new MessageFormat(pattern, Locale.ROOT).format(arguments);
    }

    /**
     * A message in a language; without arguments the text as it stands.
     *
     * @throws java.util.MissingResourceException if there is none
     */
    public String get(Locale locale, String key, Object... arguments) {
        String pattern = bundle(locale).getString(key);
        return arguments.length == 0 ? pattern : new MessageFormat(pattern, locale).format(texts(arguments));
    }

    /** Whether there is such a message. */
    public boolean has(String key) {
        return bundle(Locale.ROOT).containsKey(key);
    }

    private ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle(base, locale, anchor.getClassLoader(), NO_FALLBACK);
    }

    private static Object[] texts(Object[] arguments) {
        Object[] texts = new Object[arguments.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = String.valueOf(arguments[i]);
        }
        return texts;
    }
}
