// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;

class FieldPathTest {
    private Survey survey;

    @BeforeEach
    void survey() {
        survey = SurveyFactory.eINSTANCE.createSurvey();
        survey.setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        for (String name : List.of("service pipe", "riser no. 2")) {
            PipeSegment segment = SurveyFactory.eINSTANCE.createPipeSegment();
            segment.setName(name);
            survey.getWater().getSegments().add(segment);
        }
    }

    private void set(String path, String text) {
        FieldPath.of(path).set(survey, text);
    }

    @Test
    void setsWhatIsNamed() {
        set("water.segments[service pipe].length", "14 m ± 1 m");
        set("water.segments[2].rise", "2.9 m");
        set("water.segments[riser no. 2].material", "copper");
        assertEquals(
                "14 m ± 1 m", survey.getWater().getSegments().get(0).getLength().toString());
        assertEquals("2.9 m", survey.getWater().getSegments().get(1).getRise().toString());
        assertEquals(
                "copper", survey.getWater().getSegments().get(1).getMaterial().getLiteral());
    }

    /** None, a size, and nothing are three things. */
    @Test
    void saysThatThereIsNone() {
        set("electricity.mainBonding", "10 mm2");
        set("electricity.mainBonding", "none");
        assertNull(survey.getElectricity().getMainBonding());
        assertEquals(false, survey.getElectricity().getHasMainBonding());
        set("electricity.mainBonding", "6 mm2");
        assertNull(survey.getElectricity().getHasMainBonding());
        set("electricity.mainBonding", "-");
        assertNull(survey.getElectricity().getMainBonding());
        assertNull(survey.getElectricity().getHasMainBonding());
        assertThrows(FieldException.class, () -> set("electricity.tails", "none"), "tails are never absent");
    }

    @Test
    void makesPartsOnTheWayAndTakesValuesAway() {
        set("electricity.supplyVoltage", "238 V");
        set("requestedPower", "9.5 kW");
        assertEquals("238 V", survey.getElectricity().getSupplyVoltage().toString());
        set("requestedPower", "-");
        assertNull(survey.getRequestedPower());
    }

    @Test
    void setsSeveralValuesOfOneField() {
        set("candidates", "h85; h95");
        assertEquals(List.of("h85", "h95"), survey.getCandidates());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "water..test | 1 | not the name of a field",
                "water.segments[].length | 1 m | not the name of a field",
                "water.segments.length | 1 m | is a list",
                "water.segments[attic].length | 1 m | there is no element attic in segments; name one of service pipe, riser no. 2",
                "water.segments[3].length | 1 m | a number from 1 to 2",
                "water.test | 1 | is not a single value",
                "requestedPower.length | 1 | has no parts",
                "water.hardnes | 200 mg/L | did you mean hardness?",
                "water.segments[1].length | 5 kW | ",
                "electricity.earthing | TNCS | did you mean TN-C-S?",
                "water.source | of course | none of the known words",
            })
    void refusesWhatItCannotSetAndChangesNothing(String path, String text, String message) {
        Survey before = EcoreUtil.copy(survey);
        FieldException refused = assertThrows(FieldException.class, () -> set(path, text));
        String said = refused.getMessage();
        assertTrue(said.contains(message == null ? "" : message), said);
        assertFalse(refused.right().isBlank());
        assertTrue(EcoreUtil.equals(before, survey), "nothing is changed");
    }

    @Test
    void checksANameWithoutAnObject() {
        FieldPath.of("electricity.circuit.segments[loft].method").check(SurveyPackage.Literals.SURVEY);
        assertThrows(
                FieldException.class, () -> FieldPath.of("electricity.fuse").check(SurveyPackage.Literals.SURVEY));
    }
}
