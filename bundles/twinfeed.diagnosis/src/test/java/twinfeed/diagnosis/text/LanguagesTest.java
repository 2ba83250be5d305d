// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Translation;
import twinfeed.diagnosis.completion.CompletionAssessment;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.FaultPart;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(FaultTexts.class, "FaultSheet");
        Translation.assertGerman(FaultTexts.class, "Diagnosis");
        Translation.assertGerman(CompletionAssessment.class, "Completion");
    }

    @Test
    void reasonsOfPartsAreThoseOfTheDataFile() {
        for (FaultPart part : FaultData.own().parts().values()) {
            assertEquals(part.reason(), FaultTexts.NAMES.get(Locale.ROOT, "reason." + part.key()));
        }
    }
}
