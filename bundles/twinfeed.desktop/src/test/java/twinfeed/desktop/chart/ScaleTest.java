// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where points stand on a chart. */
final class ScaleTest {
    @Test
    void ticksAreNumbersThatPeopleLike() {
        assertEquals(List.of(0.0, 2.0, 4.0, 6.0, 8.0), Scale.of(0, 7.2, 6).ticks());
        assertEquals(
                List.of(0.0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0), Scale.of(0, 2.9, 7).ticks());
        assertEquals(List.of(-20.0, 0.0, 20.0, 40.0), Scale.of(-12, 33, 4).ticks());
    }

    @Test
    void everyValueLiesOnItsScale() {
        Random random = new Random(1);
        for (int i = 0; i < 1000; i++) {
            double from = random.nextGaussian() * Math.pow(10, random.nextInt(8) - 4);
            double to = from + Math.abs(random.nextGaussian()) * Math.pow(10, random.nextInt(8) - 4);
            Scale scale = Scale.of(from, to, 2 + random.nextInt(8));
            assertTrue(scale.share(from) >= -1e-6 && scale.share(to) <= 1 + 1e-6, scale.toString());
            assertTrue(scale.ticks().size() >= 2 && scale.ticks().size() <= 20, scale.toString());
        }
    }

    @Test
    void oneValueAloneHasAScale() {
        Scale scale = Scale.of(5, 5, 5);
        assertTrue(scale.most() > scale.least());
    }

    @Test
    void decimalsTellTicksApart() {
        assertEquals(0, Scale.of(0, 100, 6).decimals());
        assertEquals(1, Scale.of(0, 2.9, 7).decimals());
        assertEquals(2, Scale.of(0, 0.2, 6).decimals());
    }
}
