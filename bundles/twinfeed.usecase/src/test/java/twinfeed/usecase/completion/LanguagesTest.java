// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import org.junit.jupiter.api.Test;
import twinfeed.calculator.Translation;

/** German says what English says. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(PageParts.class, "Completion");
    }
}
