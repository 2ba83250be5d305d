// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.reading;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.SampleHouse;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.ElementReading;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Ratio;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;

/** Resistances by Ohm's law, R = U²/P, with the tolerance of the appliance (EN 60335-1, from memory) and of a usual meter, by hand. */
class ElementAssessmentTest {
    private static final FaultData DATA = FaultData.own();

    private final FaultFinding finding = SurveyFactory.eINSTANCE.createFaultFinding();
    private final Heater heater = SampleHouse.heater("8.5 kW", "240 V", "4.5 kW", "4.0 kW");

    private FaultFinding read(String... readings) {
        finding.getElements().clear();
        for (String each : readings) {
            ElementReading reading = SurveyFactory.eINSTANCE.createElementReading();
            if (each.equals("open")) {
                reading.setOpen(true);
            } else if (!each.isEmpty()) {
                reading.setResistance(Resistance.valueOf(each));
            }
            finding.getElements().add(reading);
        }
        return finding;
    }

    private ElementAssessment assess(String... readings) {
        return ElementAssessment.of(read(readings), heater, DATA);
    }

    private static void band(double least, double most, @Nullable ResistanceBand band) {
        assertNotNull(band);
        assertEquals(least, band.leastOhm(), 0.001);
        assertEquals(most, band.mostOhm(), 0.001);
    }

    /** 12.8 ohm, -5/+11 %, and 2 % + 0.2 ohm of the reading; a stated error of 0.1 ohm takes the place of the meter's. */
    @Test
    void theBandOfAnElement() {
        ElementAssessment elements = assess("13 ohm", "14.4 ohm ± 0.1 ohm");
        assertEquals(12.8, elements.states().get(0).band().ratedOhm(), 1e-9);
        band(12.190 - 0.46, 14.222 + 0.46, elements.states().get(0).band());
        band(13.714 - 0.1, 16.0 + 0.1, elements.states().get(1).band());
        assertEquals("1", elements.states().get(0).name());
        assertEquals("2", elements.states().get(1).name());
        assertTrue(elements.sound());
        assertFalse(elements.faulty());
    }

    /** A maker's own tolerance of 10 % both ways: 12.8 / 1.1 and 12.8 / 0.9. */
    @Test
    void theMakersToleranceIsTaken() {
        heater.setPowerToleranceUp(Ratio.valueOf("10 %"));
        heater.setPowerToleranceDown(Ratio.valueOf("10 %"));
        band(11.636 - 0.456, 14.222 + 0.456, ElementAssessment.sound(12.8, heater, DATA));
    }

    @Test
    void aBandHoldsItsEnds() {
        ResistanceBand band = new ResistanceBand(12, 11, 13);
        assertTrue(band.holds(11));
        assertTrue(band.holds(13));
        assertFalse(band.holds(10.999));
        assertFalse(band.holds(13.001));
    }

    @Test
    void anElementIsFaultyOutsideItsBandAndWhereItIsOpen() {
        ElementAssessment outside = assess("12.8 ohm", "20 ohm");
        assertTrue(outside.faulty());
        assertFalse(outside.sound());
        assertFalse(outside.states().get(1).sound());
        assertTrue(outside.states().get(1).faulty());
        ElementAssessment open = assess("12.8 ohm", "open");
        assertTrue(open.faulty());
        assertTrue(open.states().get(1).open());
        assertFalse(open.states().get(1).sound());
        assertFalse(open.states().get(0).open());
        assertEquals(1, open.openCount());
        assertEquals(0, outside.openCount());
    }

    /** One of two measured and sound says nothing of the other. */
    @Test
    void soundMeansEveryElement() {
        assertFalse(assess("12.8 ohm").sound());
        assertTrue(assess("12.8 ohm").measured());
        assertFalse(assess().measured());
        assertFalse(assess().sound());
        assertFalse(ElementAssessment.of(null, heater, DATA).measured());
        assertFalse(assess("").measured(), "a row without a reading");
    }

    /** A third element that the heater does not list has no band: it is neither sound nor faulty. */
    @Test
    void anElementThatIsNotListedCannotBeJudged() {
        ElementAssessment three = assess("12.8 ohm", "14.4 ohm", "500 ohm");
        assertNull(three.states().get(2).band());
        assertFalse(three.states().get(2).faulty());
        assertFalse(three.states().get(2).sound());
        assertFalse(three.faulty());
        assertFalse(three.sound());
        heater.getElements().get(0).setPower(null);
        assertNull(assess("12.8 ohm").states().get(0).band());
        heater.setVoltage(null);
        assertNull(assess("12.8 ohm", "14.4 ohm").states().get(1).band());
        assertEquals(0, assess("12.8 ohm").ratedV());
        assertEquals(0, assess("12.8 ohm").powerW());
    }

    /** Where no elements are listed the whole power is one: 6.776 ohm for 8.5 kW. */
    @Test
    void aHeaterWithoutAListHasOneElement() {
        Heater plain = SampleHouse.heater("8.5 kW", "240 V");
        ElementAssessment one = ElementAssessment.of(read("6.8 ohm"), plain, DATA);
        assertEquals(1, one.listed());
        assertEquals(6.776, one.states().get(0).band().ratedOhm(), 0.001);
        assertTrue(one.sound());
        ElementAssessment unknown =
                ElementAssessment.of(read("6.8 ohm"), CatalogueFactory.eINSTANCE.createHeater(), DATA);
        assertEquals(0, unknown.listed());
        assertEquals(0, unknown.ratedW());
        assertFalse(unknown.sound());
        assertFalse(unknown.faulty());
    }

    /** 12.8 and 14.4 ohm in parallel are 6.776 ohm: 8.5 kW at 240 V; with one open 4.5 kW; with none 0. */
    @Test
    void thePowerOfWhatConducts() {
        assertEquals(8500, assess("12.8 ohm", "14.4 ohm").powerW(), 0.01);
        assertEquals(4500, assess("12.8 ohm", "open").powerW(), 0.01);
        assertEquals(0, assess("open", "open").powerW());
        assertArrayEquals(new double[] {12.8}, assess("12.8 ohm", "open").conductingOhm(), 1e-9);
        assertArrayEquals(new double[] {14.4}, assess("0 ohm", "14.4 ohm").conductingOhm(), 1e-9);
    }

    private CoilAssessment coil(String rated, @Nullable String reading) {
        heater.setCoilResistance(rated.isEmpty() ? null : Resistance.valueOf(rated));
        finding.setCoil(reading == null ? null : Resistance.valueOf(reading));
        return CoilAssessment.of(finding, heater, DATA);
    }

    /** Rated 3900 ohm: 10 % of a coil and 2 % of a meter where nothing else is stated, what is stated otherwise. */
    @Test
    void theBandOfTheCoil() {
        band(3432, 4368, coil("3900 ohm", "3900 ohm").band());
        assertEquals(0.12, coil("3900 ohm", null).toleranceShare(), 1e-12);
        band(
                3900 - 195 - 78,
                3900 + 195 + 78,
                coil("3900 ohm ± 5 %", "3900 ohm").band());
        band(
                3900 - 195 - 39,
                3900 + 195 + 39,
                coil("3900 ohm ± 5 %", "3900 ohm ± 39 ohm").band());
        assertEquals(3900, coil("3900 ohm", null).band().ratedOhm());
        assertEquals(3850.0, coil("3900 ohm", "3850 ohm").readingOhm());
    }

    @Test
    void theCoilIsSoundInItsBandAndFaultyOutsideOrOpen() {
        assertTrue(coil("3900 ohm", "3500 ohm").sound());
        assertFalse(coil("3900 ohm", "3500 ohm").faulty());
        assertTrue(coil("3900 ohm", "3400 ohm").faulty());
        assertFalse(coil("3900 ohm", "3400 ohm").sound());
        CoilAssessment unmeasured = coil("3900 ohm", null);
        assertFalse(unmeasured.measured());
        assertFalse(unmeasured.sound());
        assertFalse(unmeasured.faulty());
        finding.setCoilOpen(true);
        CoilAssessment open = coil("3900 ohm", "3900 ohm");
        assertTrue(open.open());
        assertTrue(open.measured());
        assertTrue(open.faulty());
        assertFalse(open.sound());
        assertNull(open.readingOhm());
    }

    @Test
    void aCoilOfUnknownRatingCannotBeJudged() {
        CoilAssessment unknown = coil("", "3900 ohm");
        assertNull(unknown.band());
        assertTrue(unknown.measured());
        assertFalse(unknown.sound());
        assertFalse(unknown.faulty());
        assertEquals(3900.0, unknown.readingOhm());
        assertNull(coil("0 ohm", "3900 ohm").band());
        assertFalse(CoilAssessment.of(null, heater, DATA).measured());
    }

    /** 8.5 kW at 240 V: 7.81 kW at 230 V; from 5 to 40 °C 3.2 L/min. What is not to be heated has no flow. */
    @Test
    void whatASoundUnitGives() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        AcceptanceValues usual = AcceptanceValues.of(survey, heater, DATA);
        assertEquals(230, usual.voltageV());
        assertEquals(7806 * 0.9, usual.leastW(), 1);
        assertEquals(7806 * 1.05, usual.mostW(), 1);
        assertEquals(5, usual.intakeC());
        assertEquals(40, usual.outletC());
        assertEquals(3.23, usual.flowM3PerS() * 60000, 0.02);
        survey.setWinterIntake(Temperature.valueOf("8 °C"));
        assertEquals(8, AcceptanceValues.of(survey, heater, DATA).intakeC());
        survey.setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        assertEquals(8, AcceptanceValues.of(survey, heater, DATA).intakeC());
        survey.getWater().setIntakeReading(Temperature.valueOf("40 °C"));
        survey.setElectricity(SampleHouse.feed("240 V"));
        AcceptanceValues warm = AcceptanceValues.of(survey, heater, DATA);
        assertEquals(40, warm.intakeC());
        assertEquals(0, warm.flowM3PerS());
        assertEquals(240, warm.voltageV());
        survey.getElectricity().setSupplyVoltage(null);
        assertEquals(230, AcceptanceValues.of(survey, heater, DATA).voltageV());
    }
}
