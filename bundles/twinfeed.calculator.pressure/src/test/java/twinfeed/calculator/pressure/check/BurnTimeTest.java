// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.pressure.PressureCalculator;
import twinfeed.engineering.water.Scald;
import twinfeed.units.text.Phrase;

/**
 * Burn times in words: 5 s at 60 degC, 30 s at 55, 4.2 min at 51 and 20 min at 48 (table after Moritz and Henriques 1947, from memory);
 * beyond the table nobody reads "0 s" or thousands of seconds.
 */
class BurnTimeTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "73; in less than a second; in weniger als einer Sekunde",
                "60; in about 5 s; in etwa 5 s",
                "55; in about 30 s; in etwa 30 s",
                "51; in about 4 min; in etwa 4 min",
                "48; in about 20 min; in etwa 20 min",
                "44.5; in an hour or more; nach einer Stunde oder später"
            })
    void inTheUnitInWhichItIsSaid(double celsius, String english, String german) {
        assertEquals(english, said(Locale.ENGLISH, celsius));
        assertEquals(german, said(Locale.GERMAN, celsius));
    }

    /** A little more than a second, a minute and an hour are said so, a little less in the unit below. */
    @ParameterizedTest
    @CsvSource({"1, burn.atOnce, burn.seconds", "60, burn.seconds, burn.minutes", "3600, burn.minutes, burn.hour"})
    void theUnitChangesWhereItIsFull(double seconds, String below, String from) {
        assertEquals(below, BurnTime.at(celsius(0.99 * seconds)).key());
        assertEquals(from, BurnTime.at(celsius(1.01 * seconds)).key());
    }

    /** The water that burns within a time: the hotter, the sooner. */
    private static double celsius(double seconds) {
        double cooler = 44;
        double hotter = 80;
        for (int i = 0; i < 60; i++) {
            double middle = (cooler + hotter) / 2;
            if (Scald.secondsToBurn(middle) > seconds) {
                cooler = middle;
            } else {
                hotter = middle;
            }
        }
        return hotter;
    }

    private static String said(Locale locale, double celsius) {
        Phrase burn = BurnTime.at(celsius);
        return new PressureCalculator().descriptor().texts().format(locale, burn.key(), burn.arguments());
    }
}
