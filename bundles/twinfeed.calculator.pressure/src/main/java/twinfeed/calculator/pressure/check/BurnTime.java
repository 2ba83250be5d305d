// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.Map;
import twinfeed.engineering.water.Scald;
import twinfeed.units.text.Phrase;

/** How soon water burns skin, in the unit in which somebody would say it: the table behind it is good for no more. */
final class BurnTime {
    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;

    private BurnTime() {}

    /** In words, for water of a temperature, degC. */
    static Phrase at(double temperatureC) {
        double seconds = Scald.secondsToBurn(temperatureC);
        if (seconds < 1) {
            return Phrase.of("burn.atOnce");
        }
        if (seconds < MINUTE_S) {
            return new Phrase("burn.seconds", Map.of("seconds", seconds));
        }
        return seconds < HOUR_S
                ? new Phrase("burn.minutes", Map.of("minutes", seconds / MINUTE_S))
                : Phrase.of("burn.hour");
    }
}
