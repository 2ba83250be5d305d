// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * Messages beside a class: UTF-8 files {@code messages.properties}, {@code messages_de.properties}, read with that class's own
 * loader, so that OSGi finds them whoever asks. Arguments are written as they are given: numbers come as text, because their
 * decimals carry meaning.
 */
public final class Messages {
    private final String bundle;
    private final ClassLoader loader;

    /** Messages in the package of a class. */
    public Messages(Class<?> anchor) {
        bundle = anchor.getPackageName() + ".messages";
        loader = anchor.getClassLoader();
    }

    /**
     * A message.
     *
     * @throws java.util.MissingResourceException if there is none; a test asks for every key that the code uses
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
        // Without a fallback to the machine's own language: the same request gives the same quote everywhere.
        ResourceBundle.Control control =
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return ResourceBundle.getBundle(bundle, locale, loader, control);
    }

    private static Object[] texts(Object[] arguments) {
        Object[] texts = new Object[arguments.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = String.valueOf(arguments[i]);
        }
        return texts;
    }
}
