// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Locale.Category;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/**
 * Messages of one package: {@code messages.properties}, with translations beside it. Read only when something is to be
 * said, so that a good file costs nothing.
 */
public final class Messages {
    private static final Control NO_FALLBACK = Control.getNoFallbackControl(Control.FORMAT_DEFAULT);

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
        Locale locale = Locale.getDefault(Category.DISPLAY);
        ResourceBundle bundle = ResourceBundle.getBundle(base, locale, anchor.getClassLoader(), NO_FALLBACK);
        return new MessageFormat(bundle.getString(key), Locale.ROOT).format(arguments);
    }
}
