// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import twinfeed.calculator.Translation;
import twinfeed.calculator.pressure.survey.PipeTables;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.units.text.Texts;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    @Test
    void germanSaysAllThatEnglishSays() {
        Translation.assertGerman(PressureCalculator.class, "Pressure", "meaning.colebrookRoot");
    }

    @Test
    void everyFittingAndMaterialIsInWords() {
        Texts texts = new Texts(PressureCalculator.class, "Pressure");
        PipeTables.table("fittings.csv")
                .rows()
                .forEach(row -> assertTrue(texts.has("fitting." + row.get("kind")), row.get("kind")));
        for (PipeMaterial material : PipeMaterial.values()) {
            assertTrue(texts.has("material." + material.getLiteral()), material.getLiteral());
        }
    }
}
