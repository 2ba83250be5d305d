// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.safety;

import java.util.Locale;
import twinfeed.units.text.Texts;

/** The words of the safe isolation: all sheets, pages and screens take them from here, so that none says it otherwise (common practice). */
public final class SafeIsolation {
    private static final Texts TEXTS = new Texts(SafeIsolation.class, "SafeIsolation");

    private SafeIsolation() {}

    /** Both stages, step by step. */
    public static String stages(Locale locale) {
        return TEXTS.get(locale, "stages");
    }

    /** Both stages in a sentence. */
    public static String brief(Locale locale) {
        return TEXTS.get(locale, "brief");
    }

    /** What is different where the local isolator itself is under suspicion. */
    public static String suspected(Locale locale) {
        return TEXTS.get(locale, "suspected");
    }
}
