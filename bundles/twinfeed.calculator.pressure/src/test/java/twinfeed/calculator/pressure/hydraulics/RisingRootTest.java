// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Roots of functions whose root is known, and how many steps the search takes: it is asked thousands of times. */
class RisingRootTest {
    private static final int STEPS = 9;

    /** Rises by 1 at its root 2 and by more elsewhere. */
    private static double cubic(double x) {
        return (x - 2) + (x - 2) * (x - 2) * (x - 2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1, 1.9, 2.1, 3, 4})
    void isFoundFromEitherSideInAFewSteps(double guess) {
        AtomicInteger asked = new AtomicInteger();
        RisingRoot<Double> root = RisingRoot.of(
                x -> {
                    asked.incrementAndGet();
                    return cubic(x);
                },
                value -> value,
                0,
                guess);
        assertEquals(2, root.x(), 1e-9);
        assertEquals(0, root.state(), 1e-9);
        assertTrue(asked.get() <= STEPS, () -> asked + " steps");
    }

    @Test
    void aGuessThatIsTheRootIsTheAnswer() {
        RisingRoot<Double> root = RisingRoot.of(RisingRootTest::cubic, value -> value, 0, 2);
        assertEquals(2, root.x(), 0);
        assertEquals(0, root.state(), 0);
    }

    @Test
    void theRootMayBeTheEndOfTheRange() {
        RisingRoot<Double> root = RisingRoot.of(x -> 4 * x, value -> value, 0, 1);
        assertEquals(0, root.x(), 1e-9);
    }
}
