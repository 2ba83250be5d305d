// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Translation;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(FaultsCalculator.class, "Faults");
    }

    @Test
    void reasonsOfPartsAreThoseOfTheDataFile() {
        for (FaultPart part : FaultData.own().parts().values()) {
            assertEquals(part.reason(), FaultsCalculator.TEXTS.get(Locale.ROOT, "reason." + part.key()));
        }
    }
}
