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

final class WritingTest {
    private static final EAttribute STATIC = SurveyPackage.Literals.WATER_TEST__STATIC_PRESSURE;
    private static final EAttribute TAKEN_ON = SurveyPackage.Literals.SURVEY__TAKEN_ON;
    private static final EAttribute AGE = SurveyPackage.Literals.PRESENT_UNIT__AGE;

    private final Writing english = new Writing(new Words(Locale.UK));
    private final Writing german = new Writing(new Words(Locale.GERMANY));

    @Test
    void quantityIsReadAndShownInThePersonsWay() throws FieldFault {
        Object typed = german.read(STATIC, " 3,05 bar ± 0,05 bar ");
        assertEquals(Pressure.valueOf("3.05 bar ± 0.05 bar"), typed);
        assertEquals("3,05 bar ± 0,05 bar", german.show(typed));
        assertEquals("3.05 bar ± 0.05 bar", english.show(typed));
    }

    @Test
    void quantityIsAskedByItsKind() {
        assertEquals(Kind.PRESSURE, Writing.kind(STATIC));
        assertEquals(Kind.LET_THROUGH, Writing.kind(SurveyPackage.Literals.PROTECTIVE_DEVICE__LET_THROUGH));
        assertEquals(Kind.TEMPERATURE_DIFFERENCE, Writing.kind(SurveyPackage.Literals.SURVEY__MONTHLY_AIR_SPREAD));
    }

    @Test
    void faultNamesWhatIsWrongAndWhatWouldBeRight() {
        FieldFault fault = assertThrows(FieldFault.class, () -> english.read(STATIC, "3 baar"));
        assertTrue(fault.getMessage().contains("baar"), fault.getMessage());
        assertTrue(fault.getMessage().contains("kPa"), fault.getMessage());
        assertThrows(FieldFault.class, () -> english.read(STATIC, "3"), "a pressure without a unit");
        assertThrows(FieldFault.class, () -> english.read(STATIC, "3 L/min"), "a flow is no pressure");
    }

    @Test
    void nothingTypedIsNotZero() throws FieldFault {
        assertNull(english.read(STATIC, "  "));
        assertNull(english.read(AGE, ""));
        assertEquals("", english.show(null));
    }

    @Test
    void dayIsReadInTheOrderOfTheLocaleAndByTheStandard() throws FieldFault {
        LocalDate day = LocalDate.of(2026, 10, 6);
        assertEquals(day, english.read(TAKEN_ON, english.show(day)));
        assertEquals(day, german.read(TAKEN_ON, german.show(day)));
        assertEquals(day, german.read(TAKEN_ON, "2026-10-06"));
        FieldFault fault = assertThrows(FieldFault.class, () -> english.read(TAKEN_ON, "31/02/2026"));
        assertTrue(fault.getMessage().contains("2026-10-06"), fault.getMessage());
    }

    @Test
    void wholeNumberHasDigitsOnly() throws FieldFault {
        assertEquals(11, english.read(AGE, "11"));
        assertThrows(FieldFault.class, () -> english.read(AGE, "11.5"));
        assertThrows(FieldFault.class, () -> english.read(AGE, "99999999999"));
    }

    @Test
    void linesOfAnAddressAreKeptInOneText() {
        assertEquals(
                "1 Osier Quay" + System.lineSeparator() + "Netherquill",
                english.showLines("1 Osier Quay; Netherquill"));
        assertEquals("1 Osier Quay; Netherquill", Writing.readLines("1 Osier Quay \n Netherquill\n"));
        assertNull(Writing.readLines(" \n "));
    }
}
