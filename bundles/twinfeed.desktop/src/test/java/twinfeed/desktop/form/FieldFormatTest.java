// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Locale;
import org.eclipse.emf.ecore.EAttribute;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.text.Words;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Kind;
import twinfeed.units.Pressure;

final class FieldFormatTest {
    private static final EAttribute STATIC = SurveyPackage.Literals.WATER_TEST__STATIC_PRESSURE;
    private static final EAttribute TAKEN_ON = SurveyPackage.Literals.SURVEY__TAKEN_ON;
    private static final EAttribute AGE = SurveyPackage.Literals.PRESENT_UNIT__AGE;

    private final FieldFormat english = new FieldFormat(new Words(Locale.UK));
    private final FieldFormat german = new FieldFormat(new Words(Locale.GERMANY));

    @Test
    void quantityIsReadAndShownInThePersonsWay() throws InvalidFieldException {
        Object typed = german.read(STATIC, " 3,05 bar ± 0,05 bar ");
        assertEquals(Pressure.valueOf("3.05 bar ± 0.05 bar"), typed);
        assertEquals("3,05 bar ± 0,05 bar", german.show(typed));
        assertEquals("3.05 bar ± 0.05 bar", english.show(typed));
    }

    @Test
    void quantityIsAskedByItsKind() {
        assertEquals(Kind.PRESSURE, FieldFormat.kind(STATIC));
        assertEquals(Kind.LET_THROUGH, FieldFormat.kind(SurveyPackage.Literals.PROTECTIVE_DEVICE__LET_THROUGH));
        assertEquals(Kind.TEMPERATURE_DIFFERENCE, FieldFormat.kind(SurveyPackage.Literals.SURVEY__MONTHLY_AIR_SPREAD));
    }

    @Test
    void faultNamesWhatIsWrongAndWhatWouldBeRight() {
        InvalidFieldException fault = assertThrows(InvalidFieldException.class, () -> english.read(STATIC, "3 baar"));
        assertTrue(fault.getMessage().contains("baar"), fault.getMessage());
        assertTrue(fault.getMessage().contains("kPa"), fault.getMessage());
        assertThrows(InvalidFieldException.class, () -> english.read(STATIC, "3 L/min"), "a flow is no pressure");
    }

    @Test
    void numberWithoutAUnitTakesThatOfItsField() throws InvalidFieldException {
        assertEquals(Pressure.valueOf("3 bar"), english.read(STATIC, "3"));
        assertEquals(Pressure.valueOf("3.05 bar ± 0.05 bar"), german.read(STATIC, "3,05 ± 0,05"));
        assertEquals("40 A", shown(SurveyPackage.Literals.PROTECTIVE_DEVICE__RATING, "40"));
        assertEquals("30 mA", shown(SurveyPackage.Literals.RESIDUAL_DEVICE__RESIDUAL, "30"));
        assertEquals("1.2 kA", shown(SurveyPackage.Literals.ELECTRICAL_FEED__PROSPECTIVE_FAULT, "1.2"));
        assertEquals("200 MΩ", shown(SurveyPackage.Literals.CIRCUIT__INSULATION_RESISTANCE, "200"));
    }

    /** A pipe of 15 is one of 15 mm, never of 15 m. */
    @Test
    void sizesOfPipesAreInMillimetres() throws InvalidFieldException {
        assertEquals("15 mm", shown(SurveyPackage.Literals.PIPE_SEGMENT__SIZE, "15"));
        assertEquals("13.6 mm", shown(SurveyPackage.Literals.PIPE_SEGMENT__BORE, "13.6"));
        assertEquals("5.5 m", shown(SurveyPackage.Literals.PIPE_SEGMENT__LENGTH, "5.5"));
        assertEquals("22 mm", shown(SurveyPackage.Literals.PIPE_SEGMENT__SIZE, "22 mm"));
    }

    private String shown(EAttribute attribute, String typed) throws InvalidFieldException {
        return english.show(english.read(attribute, typed));
    }

    /** Whatever a field shows as its unit must be one that it reads. */
    @Test
    void everyFieldReadsABareNumber() {
        int seen = 0;
        for (var type : SurveyPackage.eINSTANCE.getEClassifiers()) {
            if (type instanceof org.eclipse.emf.ecore.EClass holder) {
                for (EAttribute attribute : holder.getEAttributes()) {
                    if (!FieldUnit.of(attribute).isEmpty()) {
                        seen++;
                        org.junit.jupiter.api.Assertions.assertDoesNotThrow(
                                () -> english.read(attribute, "7"), attribute.getName());
                    }
                }
            }
        }
        assertTrue(seen > 50, "fields with a unit: " + seen);
    }

    @Test
    void nothingTypedIsNotZero() throws InvalidFieldException {
        assertNull(english.read(STATIC, "  "));
        assertNull(english.read(AGE, ""));
        assertEquals("", english.show(null));
    }

    @Test
    void dayIsReadInTheOrderOfTheLocaleAndByTheStandard() throws InvalidFieldException {
        LocalDate day = LocalDate.of(2026, 10, 6);
        assertEquals(day, english.read(TAKEN_ON, english.show(day)));
        assertEquals(day, german.read(TAKEN_ON, german.show(day)));
        assertEquals(day, german.read(TAKEN_ON, "2026-10-06"));
        InvalidFieldException fault =
                assertThrows(InvalidFieldException.class, () -> english.read(TAKEN_ON, "31/02/2026"));
        assertTrue(fault.getMessage().contains("2026-10-06"), fault.getMessage());
    }

    @Test
    void wholeNumberHasDigitsOnly() throws InvalidFieldException {
        assertEquals(11, english.read(AGE, "11"));
        assertThrows(InvalidFieldException.class, () -> english.read(AGE, "11.5"));
        assertThrows(InvalidFieldException.class, () -> english.read(AGE, "99999999999"));
    }

    @Test
    void linesOfAnAddressAreKeptInOneText() {
        assertEquals(
                "1 Osier Quay" + System.lineSeparator() + "Netherquill",
                english.showLines("1 Osier Quay; Netherquill"));
        assertEquals("1 Osier Quay; Netherquill", FieldFormat.readLines("1 Osier Quay \n Netherquill\n"));
        assertNull(FieldFormat.readLines(" \n "));
    }
}
