// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of heat that hold for any shower. */
class HeatProperties {
    @Property(seed = "1")
    void flowAndOutletComeBackFromEachOther(
            @ForAll @DoubleRange(min = 500, max = 15_000) double powerW,
            @ForAll @DoubleRange(min = 0, max = 30) double intakeC,
            @ForAll @DoubleRange(min = 0.5, max = 60) double riseK) {
        double flow = Heat.massFlowForOutlet(powerW, intakeC, intakeC + riseK).value();
        double outletC = Heat.outletTemperature(powerW, intakeC, flow).value();
        assertEquals(intakeC + riseK, outletC, 1e-9);
        assertEquals(powerW, Heat.powerForFlow(flow, intakeC, outletC).value(), powerW * 1e-9);
    }

    @Property(seed = "2")
    void colderWaterMeansLessFlow(
            @ForAll @DoubleRange(min = 500, max = 15_000) double powerW,
            @ForAll @DoubleRange(min = 0, max = 30) double intakeC,
            @ForAll @DoubleRange(min = 0.01, max = 9) double warmerK,
            @ForAll @DoubleRange(min = 40, max = 60) double outletC) {
        double cold = Heat.massFlowForOutlet(powerW, intakeC, outletC).value();
        double warm = Heat.massFlowForOutlet(powerW, intakeC + warmerK, outletC).value();
        assertTrue(cold < warm);
    }

    @Property(seed = "3")
    void lessFlowMeansHotter(
            @ForAll @DoubleRange(min = 500, max = 12_000) double powerW,
            @ForAll @DoubleRange(min = 0, max = 25) double intakeC,
            @ForAll @DoubleRange(min = 0.06, max = 0.3) double flow,
            @ForAll @DoubleRange(min = 0.7, max = 0.99) double share) {
        double before = Heat.outletTemperature(powerW, intakeC, flow).value();
        double after = Heat.outletTemperature(powerW, intakeC, flow * share).value();
        assertTrue(after > before && before > intakeC);
    }

    @Property(seed = "4")
    void twoShareAllOfThePower(
            @ForAll @DoubleRange(min = 1, max = 100) double first,
            @ForAll @DoubleRange(min = 1, max = 100) double second,
            @ForAll @DoubleRange(min = 0, max = 260) double volt) {
        assertEquals(1, Heat.shareOfElement(0, first, second) + Heat.shareOfElement(1, first, second), 1e-12);
        double together = Heat.powerOfResistance(Heat.parallelResistance(first, second), volt);
        assertEquals(
                together,
                Heat.powerOfResistance(first, volt) + Heat.powerOfResistance(second, volt),
                1e-9 * (1 + together));
        assertEquals(
                Heat.powerOfResistance(second, volt),
                together * Heat.shareOfElement(1, first, second),
                1e-9 * (1 + together));
    }

    @Property(seed = "5")
    void warmerIsLighterThinnerAndRicher(
            @ForAll @DoubleRange(min = 4.5, max = 99) double lowC,
            @ForAll @DoubleRange(min = 0.01, max = 1) double moreK) {
        double highC = lowC + moreK;
        assertTrue(Water.density(highC) < Water.density(lowC));
        assertTrue(Water.dynamicViscosity(highC) < Water.dynamicViscosity(lowC));
        assertTrue(Water.enthalpy(highC) > Water.enthalpy(lowC));
    }
}
