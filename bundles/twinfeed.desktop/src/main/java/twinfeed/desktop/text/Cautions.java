// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.text;

import java.util.Map;
import twinfeed.calculator.safety.SafeIsolation;

/** The cautions of the window; the words of the isolation are those of every sheet. */
public final class Cautions {
    private Cautions() {}

    /** What always stands in the window. */
    public static String line(Words words) {
        return words.format("cautions.line", Map.of("isolation", SafeIsolation.brief(words.locale())));
    }

    /** All of it. */
    public static String full(Words words) {
        return words.format(
                "cautions.text",
                Map.of(
                        "isolation",
                        SafeIsolation.stages(words.locale()),
                        "suspected",
                        SafeIsolation.suspected(words.locale())));
    }
}
