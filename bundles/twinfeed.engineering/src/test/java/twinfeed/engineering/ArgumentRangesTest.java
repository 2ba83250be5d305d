// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.Protection;
import twinfeed.engineering.demand.DiversityRule;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/** The ranges that the descriptions of arguments give: the ends belong to them, and what lies just outside is refused. */
class ArgumentRangesTest {
    private static final SupplyCurve SUPPLY = new SupplyCurve(3e5, 2e5, 2e-4);

    private static Stream<Arguments> ranges() {
        return Stream.of(
                range(30, 250, tp -> Cable.temperatureFactor(1, 1, 20, 40, tp)),
                range(0.01, 1, cMin -> Protection.maxLoopImpedanceOhm(5, 40, 230, cMin)),
                range(0, 1, share -> DiversityRule.onTotal("cooker", 10, share).shareAbove()),
                range(0, 1, share -> DiversityRule.byRank("heater", List.of(1.0, share))
                        .rankShares()
                        .get(1)),
                range(1, 2, exponent -> SUPPLY.pressureAt(1e-4, exponent)),
                range(1, 2, exponent -> SUPPLY.flowAt(2.5e5, exponent).value()));
    }

    private static Arguments range(double least, double most, DoubleUnaryOperator computed) {
        return Arguments.of(least, most, computed);
    }

    @ParameterizedTest
    @MethodSource("ranges")
    void endsOfARangeAreTakenAndWhatLiesJustOutsideIsNot(double least, double most, DoubleUnaryOperator computed) {
        assertTrue(Double.isFinite(computed.applyAsDouble(least)));
        assertTrue(Double.isFinite(computed.applyAsDouble(most)));
        assertThrows(DomainException.class, () -> computed.applyAsDouble(most * 1.01));
        assertThrows(DomainException.class, () -> computed.applyAsDouble(least - 0.01 * most));
    }

    @Test
    void outletOfACoefficientPassesItAtAHeadOfOneMetre() {
        Fluid water = Fluid.waterAt(10);
        Outlet outlet = Outlet.ofCoefficient(1e-4, water);
        assertEquals(1e-4, outlet.flowAt(water.pressureOfHead(1)), 1e-12);
        assertEquals(2e-4, outlet.flowAt(water.pressureOfHead(4)), 1e-12);
    }

    @Test
    void frictionIsThatOfTurbulentFlowFromAReynoldsNumberOf2000() {
        PipeSegment pipe = new PipeSegment(1, 0.0136, 0, 0, 0);
        Fluid water = Fluid.waterAt(10);
        double laminarPaPerFlow = Pipe.frictionLossPa(pipe, water, 1e-6) / 1e-6;
        double at2000 = 2000 / Pipe.reynolds(1, 0.0136, water);
        assertEquals(1, Pipe.frictionLossPa(pipe, water, 0.999 * at2000) / (laminarPaPerFlow * 0.999 * at2000), 1e-9);
        // 64/Re is 0.0319 there, and the factor of a smooth pipe about 0.0495.
        assertEquals(
                1.55, Pipe.frictionLossPa(pipe, water, 1.001 * at2000) / (laminarPaPerFlow * 1.001 * at2000), 0.03);
    }
}
