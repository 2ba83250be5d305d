// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.units.Kind;

/** A value that only rounding keeps from its limit lies on it; the smallest difference that an instrument could show counts. */
class LimitTypeTest {
    private static Finding compared(LimitType type, double value, double limit) {
        List<Finding> all = new ArrayList<>();
        new FindingBuilder("made-up", Check.of("made.up", FindingClass.SAFETY, type, Kind.RATIO), all::add)
                .compare(value, limit)
                .add();
        return all.get(0);
    }

    @Property
    void aLimitMovedOntoItsValuePasses(
            @ForAll @DoubleRange(min = -1e9, max = 1e9) double value,
            @ForAll @IntRange(min = -8, max = 8) int lastDigits) {
        double limit = value + lastDigits * Math.ulp(value);
        for (LimitType type : List.of(LimitType.AT_LEAST, LimitType.AT_MOST)) {
            Finding finding = compared(type, value, limit);
            assertEquals(Outcome.PASSES, finding.outcome());
            assertEquals(0, finding.figures() == null ? -1 : finding.figures().margin());
        }
        assertFalse(LimitType.exceeds(value, limit));
        assertFalse(LimitType.fallsShort(value, limit));
    }

    @Property
    void aMillionthBeyondTheLimitFails(@ForAll @DoubleRange(min = 0.01, max = 1e9) double value) {
        assertEquals(
                Outcome.FAILS,
                compared(LimitType.AT_MOST, value, value * (1 - 1e-6)).outcome());
        assertEquals(
                Outcome.FAILS,
                compared(LimitType.AT_LEAST, value, value * (1 + 1e-6)).outcome());
        assertEquals(
                Outcome.FAILS,
                compared(LimitType.AT_MOST, -value, -value * (1 + 1e-6)).outcome());
        assertTrue(LimitType.exceeds(value, value * (1 - 1e-6)));
        assertTrue(LimitType.fallsShort(value, value * (1 + 1e-6)));
    }

    @Test
    void aLimitOfNothingIsMetByRoundingOnly() {
        assertEquals(Outcome.PASSES, compared(LimitType.AT_LEAST, -1e-15, 0).outcome());
        assertEquals(Outcome.FAILS, compared(LimitType.AT_LEAST, -1e-6, 0).outcome());
    }

    @Test
    void aTemperatureComputedBackIsOnItsTarget() {
        assertEquals(
                Outcome.PASSES,
                compared(LimitType.AT_MOST, 44.00000000000001, 44).outcome());
    }

    /** A billionth of the larger of both, and at least 1e-12, counts as rounding; what is exactly that much off still lies on the limit. */
    @Test
    void marginsAndSlackByHand() {
        assertEquals(2, LimitType.AT_LEAST.margin(12, 10));
        assertEquals(-2, LimitType.AT_MOST.margin(12, 10));
        assertEquals(5e-8, LimitType.slack(-50, 40), 1e-20);
        assertEquals(1e-12, LimitType.slack(0, 1e-6));
        assertEquals(1e-12, LimitType.slack(1, Double.POSITIVE_INFINITY));
        assertTrue(LimitType.exceeds(Double.POSITIVE_INFINITY, 1));
        assertTrue(LimitType.fallsShort(1, Double.POSITIVE_INFINITY));
        assertFalse(LimitType.exceeds(1e-12, 0));
        assertTrue(LimitType.exceeds(1.1e-12, 0));
        assertFalse(LimitType.fallsShort(-1e-12, 0));
        assertTrue(LimitType.fallsShort(-1.1e-12, 0));
        assertEquals(0, LimitType.AT_LEAST.margin(-1e-12, 0));
        assertEquals(-1.1e-12, LimitType.AT_LEAST.margin(-1.1e-12, 0));
    }
}
