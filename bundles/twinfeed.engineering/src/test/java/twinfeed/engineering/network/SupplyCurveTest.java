// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.engineering.TradeUnits.BAR;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.SlopedValue;
import twinfeed.engineering.numeric.Solution;

/** The two-point test and its curve; outside values are in hydraulics.csv. */
class SupplyCurveTest {
    private static final SupplyCurve CURVE = new SupplyCurve(3 * BAR, 1.6 * BAR, 15 * L_PER_MIN);

    @ParameterizedTest
    @CsvSource({
        "3, 2.7, 9, USABLE",
        "3, 2.7001, 9, SMALL_DROP",
        "3, 3, 9, RUNNING_NOT_BELOW_STATIC",
        "3, 2, 0, FLOW_NOT_POSITIVE"
    })
    void judgesATest(double staticBar, double runningBar, double litresPerMin, SupplyTest expected) {
        SupplyTest actual = SupplyTest.of(staticBar * BAR, runningBar * BAR, litresPerMin * L_PER_MIN);
        assertEquals(expected, actual);
        assertEquals(expected == SupplyTest.USABLE || expected == SupplyTest.SMALL_DROP, actual.isAccepted());
    }

    @Test
    void aTestReadInOtherUnitsIsJudgedTheSame() {
        // 0.30 and 0.27 MPa, 43.5113 and 39.1602 psi: exactly a tenth in the reading, nearly so in binary.
        assertEquals(SupplyTest.USABLE, SupplyTest.of(0.30e6, 0.27e6, 1e-4));
        assertEquals(SupplyTest.USABLE, SupplyTest.of(2.2 * BAR, 1.98 * BAR, 1e-4));
        assertEquals(SupplyTest.USABLE, SupplyTest.of(0.7 * BAR, 0.63 * BAR, 1e-4));
    }

    @Test
    void passesThroughItsPoints() {
        assertEquals(3 * BAR, CURVE.pressureAt(0));
        assertEquals(1.6 * BAR, CURVE.pressureAt(15 * L_PER_MIN), 1e-6);
        assertEquals(1.6 * BAR, CURVE.pressureAt(15 * L_PER_MIN * (1 + 1e-12)), 1e-3);
        assertEquals(1.4 * BAR, CURVE.dropPa(), 1e-9);
    }

    /** Pipe friction within the test, an orifice beyond it: at the test itself the flow belongs to the measured side. */
    @Test
    void theTestItselfBelongsToTheMeasuredSide() {
        double drop = 1.4 * BAR / (15 * L_PER_MIN);
        assertEquals(-1.85 * drop, CURVE.slopeAt(15 * L_PER_MIN), drop * 1e-12);
        assertEquals(-2 * drop, CURVE.slopeAt(15 * L_PER_MIN * (1 + 1e-9)), drop * 1e-6);
    }

    @Test
    void atNoFlowThePressureIsStillFlat() {
        SlopedValue at = new SlopedValue();
        CURVE.at(0, at);
        assertEquals(3 * BAR, at.value);
        assertEquals(0, at.slope);
    }

    @ParameterizedTest
    @CsvSource({"5", "9", "14", "16", "18", "21"})
    void theRuleTakesThePessimisticExponentOnEachSide(double litresPerMin) {
        double flow = litresPerMin * L_PER_MIN;
        double pessimistic = Math.min(CURVE.pressureAt(flow, 1.85), CURVE.pressureAt(flow, 2));
        assertEquals(pessimistic, CURVE.pressureAt(flow));
    }

    @ParameterizedTest
    @CsvSource({"0.5", "9", "14.9", "15.1", "21"})
    void flowComesBackFromThePressure(double litresPerMin) {
        double flow = litresPerMin * L_PER_MIN;
        assertEquals(flow, CURVE.flowAt(CURVE.pressureAt(flow)).value(), flow * 1e-9);
        assertEquals(flow, CURVE.flowAt(CURVE.pressureAt(flow, 1.9), 1.9).value(), flow * 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"1", "9", "20"})
    void slopeIsThatOfThePressure(double litresPerMin) {
        double flow = litresPerMin * L_PER_MIN;
        double step = flow * 1e-6;
        double expected = (CURVE.pressureAt(flow + step) - CURVE.pressureAt(flow - step)) / (2 * step);
        assertEquals(expected, CURVE.slopeAt(flow), Math.abs(expected) * 1e-6);
    }

    @Test
    void whatTheSupplyCannotGiveIsNamed() {
        assertEquals(Solution.none(FailureReason.SUPPLY_TOO_WEAK), CURVE.flowAt(3.01 * BAR));
        assertEquals(Solution.of(0), CURVE.flowAt(3 * BAR));
        assertTrue(CURVE.pressureAt(60 * L_PER_MIN) < 0);
        assertFalse(SupplyTest.FLOW_NOT_POSITIVE.isAccepted());
    }

    @ParameterizedTest
    @CsvSource({"1", "9", "20"})
    void aKnownExponentHoldsOnBothSidesOfTheTest(double litresPerMin) {
        PowerCurve curve = new PowerCurve(CURVE, 1.9);
        double flow = litresPerMin * L_PER_MIN;
        assertEquals(3 * BAR - 1.4 * BAR * Math.pow(litresPerMin / 15, 1.9), curve.pressureAt(flow), 1e-6);
        double step = flow * 1e-6;
        double expected = (curve.pressureAt(flow + step) - curve.pressureAt(flow - step)) / (2 * step);
        assertEquals(expected, curve.slopeAt(flow), Math.abs(expected) * 1e-6);
        assertThrows(DomainException.class, () -> new PowerCurve(CURVE, 2.1));
    }

    @Test
    void aFixedPressureStays() {
        FixedPressure tank = new FixedPressure(0.3 * BAR);
        assertEquals(0.3 * BAR, tank.pressureAt(1));
        assertEquals(0, tank.slopeAt(1));
        assertThrows(DomainException.class, () -> new FixedPressure(-1));
    }

    @Test
    void refusesWhatHasNoMeaning() {
        assertThrows(DomainException.class, () -> CURVE.pressureAt(-1));
        assertThrows(DomainException.class, () -> CURVE.pressureAt(1, 2.1));
        assertThrows(DomainException.class, () -> CURVE.flowAt(-1));
        assertThrows(DomainException.class, () -> SupplyTest.of(-1, 0, 1));
        assertThrows(DomainException.class, () -> SupplyTest.of(1, 0, Double.NaN));
    }
}
