// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.engineering.TradeUnits.BAR;
import static twinfeed.engineering.TradeUnits.L_PER_MIN;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;

/** All flows at once against a bisection of the pressure at the tee that knows only {@link Pipe}. */
class FlowBalanceTest {
    private static final Fluid COLD = Fluid.waterAt(10);
    private static final Outlet SHOWER = Outlet.ofCoefficient(2.5 * L_PER_MIN, COLD);

    /** One house with a tap and a unit at a free outlet. */
    private record House(Supply supply, PipeSegment common, PipeSegment tapPipe, Outlet tap, PipeSegment unitPipe) {
        static House of(Random random) {
            double staticPa = (1 + 5 * random.nextDouble()) * BAR;
            return new House(
                    new SupplyCurve(
                            staticPa,
                            staticPa * random.nextDouble() * 0.95,
                            (8 + 20 * random.nextDouble()) * L_PER_MIN),
                    pipe(random, 0),
                    pipe(random, 0),
                    Outlet.ofCoefficient((2 + 4 * random.nextDouble()) * L_PER_MIN, COLD),
                    pipe(random, 3));
        }

        private static PipeSegment pipe(Random random, double riseM) {
            return new PipeSegment(
                    1 + 20 * random.nextDouble(),
                    random.nextBoolean() ? 13.6e-3 : 20.2e-3,
                    random.nextBoolean() ? 1.5e-6 : 7e-6,
                    10 * random.nextDouble(),
                    riseM);
        }

        FlowBalance balance() {
            return new FlowBalance(
                    supply,
                    PipeRun.of(List.of(common), COLD),
                    List.of(branch(tapPipe, tap), branch(unitPipe, SHOWER)),
                    0);
        }

        private static Branch branch(PipeSegment pipe, Outlet outlet) {
            return new Branch(PipeRun.of(List.of(pipe), COLD), outlet);
        }

        double teeByBisection() {
            double low = 0;
            double high = supply.pressureAt(0);
            for (int i = 0; i < 100; i++) {
                double middle = (low + high) / 2;
                double drawn = flowByBisection(tapPipe, tap, middle) + flowByBisection(unitPipe, SHOWER, middle);
                boolean tooLow = supply.pressureAt(drawn)
                                - PipeRun.of(List.of(common), COLD).totalPa(drawn)
                        > middle;
                low = tooLow ? middle : low;
                high = tooLow ? high : middle;
            }
            return low;
        }

        private static double flowByBisection(PipeSegment pipe, Outlet outlet, double teePa) {
            double low = 0;
            double high = 5e-3;
            for (int i = 0; i < 100; i++) {
                double middle = (low + high) / 2;
                boolean tooLow = PipeRun.of(List.of(pipe), COLD).totalPa(middle) + outlet.pressureAt(middle) < teePa;
                low = tooLow ? middle : low;
                high = tooLow ? high : middle;
            }
            return low;
        }
    }

    @Test
    void agreesWithABisectionToATenThousandthOfAPascal() {
        Random random = new Random(3);
        int found = 0;
        for (int i = 0; i < 500; i++) {
            House house = House.of(random);
            FlowBalance balance = house.balance();
            if (balance.found()) {
                found++;
                double teePa = house.teeByBisection();
                assertEquals(teePa, balance.teePa(), 1e-4, house::toString);
                double unit = House.flowByBisection(house.unitPipe(), SHOWER, teePa);
                assertEquals(unit, balance.flows()[1], 1e-9 * unit + 1e-14, house::toString);
            }
        }
        assertTrue(found > 475, "found at once: " + found + " of 500");
    }

    @Test
    void givesUpWhereNothingFlowsThroughABranch() {
        House attic = new House(
                new FixedPressure(0.2 * BAR),
                new PipeSegment(5, 20.2e-3, 0, 0, 0),
                new PipeSegment(5, 13.6e-3, 0, 0, 0),
                SHOWER,
                new PipeSegment(5, 13.6e-3, 0, 0, 4));
        assertFalse(attic.balance().found());
    }

    @Test
    void givesUpOnNumbersBeyondTheRange() {
        House absurd = new House(
                new FixedPressure(1e300),
                new PipeSegment(1e200, 1e-3, 0, 0, 0),
                new PipeSegment(5, 13.6e-3, 0, 0, 0),
                SHOWER,
                new PipeSegment(5, 13.6e-3, 0, 0, 4));
        assertFalse(absurd.balance().found());
    }
}
