// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.interchange;

import org.junit.jupiter.api.Test;
import twinfeed.calculator.Translation;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(VisitCalendar.class, "Interchange");
    }
}
