// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static twinfeed.engineering.TradeUnits.KG_PER_MIN;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;

class HeatTest {
    @ParameterizedTest
    @CsvSource({"8500, 2, 38", "9500, 5, 41", "10500, 12, 44", "3000, 18, 60", "12000, 4, 95"})
    void massFlowAgreesWithIapwsEnthalpies(double powerW, double intakeC, double outletC) {
        IF97 iapws = new IF97(IF97.UnitSystem.SI);
        double rise =
                iapws.specificEnthalpyPT(0.2e6, outletC + 273.15) - iapws.specificEnthalpyPT(0.2e6, intakeC + 273.15);
        double expected = powerW / rise;
        assertEquals(expected, Heat.massFlowForOutlet(powerW, intakeC, outletC).value(), expected * 3e-4);
    }

    /** 9.5 kW from 5 degC: 3.9, 3.0 and 2.0 L/min give 40, 50 and 73 degC (closed form): less flow is hotter. */
    @ParameterizedTest
    @CsvSource({"3.9, 40", "3.0, 50", "2.0, 73"})
    void lessFlowIsHotter(double litresPerMin, double expectedC) {
        double mass = Heat.massFlow(litresPerMin * L_PER_MIN, 5);
        assertEquals(expectedC, Heat.outletTemperature(9500, 5, mass).value(), 0.5);
    }

    @Test
    void questionsWithoutANumberAreNamed() {
        assertEquals(Solution.none(FailureReason.NO_POWER), Heat.massFlowForOutlet(0, 5, 40));
        assertEquals(Solution.none(FailureReason.NO_HEATING_NEEDED), Heat.massFlowForOutlet(0, 40, 40));
        assertEquals(Solution.none(FailureReason.FLOW_NOT_POSITIVE), Heat.outletTemperature(9500, 5, 0));
        assertEquals(Solution.none(FailureReason.FLOW_NOT_POSITIVE), Heat.outletTemperature(9500, 5, -1));
        assertEquals(Solution.none(FailureReason.ABOVE_100_DEGC), Heat.outletTemperature(9500, 5, 1 * KG_PER_MIN));
        assertEquals(5, Heat.outletTemperature(0, 5, 0.1).value(), 1e-9);
        assertEquals(100, Heat.outletTemperature(0, 100, 0.1).value());
        assertEquals(Solution.of(0), Heat.powerForFlow(0, 5, 40));
    }

    @Test
    void volumeDependsOnWhereItIsMeasured() {
        double mass = 4 * KG_PER_MIN;
        assertEquals(4.00, Heat.volumeFlowAtInlet(mass, 5) / L_PER_MIN, 0.001);
        assertEquals(4.031, Heat.volumeFlowAtOutlet(mass, 40) / L_PER_MIN, 0.001);
        assertEquals(mass, Heat.massFlow(Heat.volumeFlowAtOutlet(mass, 40), 40), 1e-15);
    }

    /** Ohm's law: 8.5 / 9.5 / 10.5 kW at 240 V are 6.776 / 6.063 / 5.486 ohm; at 230 V 7.806 / 8.725 / 9.643 kW. */
    @ParameterizedTest
    @CsvSource({"8500, 6.776, 7806, 35.42", "9500, 6.063, 8725, 39.58", "10500, 5.486, 9643, 43.75"})
    void ratingsAreThoseOfAResistance(double ratedW, double ohm, double at230W, double ratedA) {
        assertEquals(ohm, Heat.elementResistance(ratedW, 240), 0.0005);
        assertEquals(at230W, Heat.powerAtVoltage(ratedW, 240, 230), 0.5);
        assertEquals(at230W, Heat.powerOfResistance(Heat.elementResistance(ratedW, 240), 230), 0.5);
        assertEquals(ratedA, Heat.currentAt(ratedW, 240, 240), 0.005);
    }

    /** A 9.5 kW unit draws 37.9 A at 230 V and 41.7 A at 253 V; a 10.5 kW unit 46.1 A at 253 V (closed form). */
    @Test
    void currentFollowsTheVoltage() {
        assertEquals(37.9, Heat.currentAt(9500, 240, 230), 0.05);
        assertEquals(41.7, Heat.currentAt(9500, 240, 253), 0.05);
        assertEquals(46.1, Heat.currentAt(10500, 240, 253), 0.05);
    }

    @Test
    void elementsShareThePowerByTheirConductance() {
        // 13.1 and 13.6 ohm in parallel are 6.673 ohm (a published measurement)
        assertEquals(6.673, Heat.parallelResistance(13.1, 13.6), 0.0005);
        assertEquals(13.6 / 26.7, Heat.shareOfElement(0, 13.1, 13.6), 1e-15);
        assertEquals(13.1 / 26.7, Heat.shareOfElement(1, 13.1, 13.6), 1e-15);
        assertEquals(1, Heat.shareOfElement(0, 6));
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertRefused(FailureReason.NEGATIVE, "powerW", () -> Heat.massFlowForOutlet(-1, 5, 40));
        assertRefused(FailureReason.OUTSIDE_WATER_RANGE, "intakeC", () -> Heat.massFlowForOutlet(1, -1, 40));
        assertRefused(FailureReason.OUTSIDE_WATER_RANGE, "outletC", () -> Heat.massFlowForOutlet(1, 5, 101));
        assertRefused(FailureReason.NOT_FINITE, "massFlowKgPerS", () -> Heat.outletTemperature(1, 5, Double.NaN));
        assertRefused(FailureReason.NOT_POSITIVE, "ratedV", () -> Heat.powerAtVoltage(1, 0, 230));
        assertRefused(FailureReason.NOT_POSITIVE, "ratedW", () -> Heat.elementResistance(0, 230));
        assertRefused(FailureReason.NOT_POSITIVE, "elementsOhm.length", Heat::parallelResistance);
        assertRefused(FailureReason.NOT_POSITIVE, "elementsOhm", () -> Heat.parallelResistance(6, 0));
        assertRefused(FailureReason.OUTSIDE_RANGE, "element", () -> Heat.shareOfElement(2, 6, 6));
        assertRefused(FailureReason.OUTSIDE_RANGE, "element", () -> Heat.shareOfElement(-1, 6, 6));
    }

    private static void assertRefused(FailureReason trouble, String argument, Runnable call) {
        DomainException refused = assertThrows(DomainException.class, call::run);
        assertEquals(trouble, refused.trouble());
        assertEquals(argument, refused.argument());
    }
}
