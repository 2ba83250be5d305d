// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop;

import java.util.List;
import java.util.Locale;

/** The language of the window: the system's where the window speaks it, or the one that was chosen; numbers are written in its way. */
public final class WindowLanguage {
    /** The choice of those who want the system's. */
    public static final String SYSTEM = "system";

    /** Languages that the window speaks. */
    public static final List<String> CODES = List.of("en", "de");

    private WindowLanguage() {}

    /**
     * The locale of a choice. A chosen language keeps the system's region where that is of the same language; a system that names no region,
     * as in the locale C, has that of the trade's own market, so that days are not written the American way.
     *
     * @param chosen a code of {@link #CODES}, or anything else for the system's
     * @param system the system's locale
     */
    public static Locale of(String chosen, Locale system) {
        String language = CODES.contains(chosen) ? chosen : system.getLanguage();
        if (system.getLanguage().equals(language)
                && CODES.contains(language)
                && !system.getCountry().isEmpty()) {
            return system;
        }
        return language.equals("de") ? Locale.GERMANY : Locale.UK;
    }

    /** The locale of papers: the window's, or that of a language that was chosen for them. */
    public static Locale ofPapers(String chosen, Locale window) {
        return CODES.contains(chosen) ? of(chosen, window) : window;
    }
}
