// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import org.junit.jupiter.api.Test;
import twinfeed.calculator.Translation;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(twinfeed.workbook.text.WorkbookTexts.class, "Workbook", "unit.hours", "unit.m");
        Translation.assertGerman(
                twinfeed.workbook.text.WorkbookTexts.class,
                "Readings",
                "label.Customer.name",
                "label.ParameterValue.key",
                "label.Site.name");
    }
}
