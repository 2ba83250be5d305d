// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import org.junit.jupiter.api.Test;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(
                Runner.class, "Common", "month.4", "month.8", "month.9", "month.11", "voltage");
    }
}
