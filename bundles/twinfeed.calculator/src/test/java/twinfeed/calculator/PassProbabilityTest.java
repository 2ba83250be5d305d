// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class PassProbabilityTest {
    private static final MarginInterval INTERVAL = new MarginInterval(-2, 3, "survey.water.test.flow");

    @Test
    void worksOutTheIntervalOnceAndNotBeforeItIsAskedFor() {
        AtomicInteger worked = new AtomicInteger();
        PassProbability chance = new PassProbability(0.5, () -> {
            worked.incrementAndGet();
            return INTERVAL;
        });
        assertTrue(chance.tooClose());
        assertEquals(0, worked.get());
        assertEquals(INTERVAL, chance.interval());
        assertEquals(INTERVAL, chance.interval());
        assertEquals(1, worked.get());
    }

    @Test
    void isEqualWhereChanceAndIntervalAre() {
        PassProbability asked = new PassProbability(0.5, () -> INTERVAL);
        assertEquals(new PassProbability(0.5, INTERVAL), asked);
        assertEquals(new PassProbability(0.5, INTERVAL).hashCode(), asked.hashCode());
        assertNotEquals(new PassProbability(0.6, INTERVAL), asked);
        assertNotEquals(new PassProbability(0.5, MarginInterval.NONE), asked);
        assertNotEquals(asked, (Object) 0.5);
    }

    @Test
    void saysWhatItKnows() {
        assertEquals(
                "passes 0.5, MarginInterval[low=-2.0, high=3.0, remeasure=survey.water.test.flow]",
                new PassProbability(0.5, INTERVAL).toString());
    }

    @Test
    void isTooCloseBetweenTheTwoDoubts() {
        assertFalse(new PassProbability(PassProbability.DOUBT, INTERVAL).tooClose());
        assertTrue(new PassProbability(0.051, INTERVAL).tooClose());
        assertTrue(new PassProbability(0.949, INTERVAL).tooClose());
        assertFalse(new PassProbability(1 - PassProbability.DOUBT, INTERVAL).tooClose());
    }
}
