// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SolutionTest {
    private static final Solution NONE = Solution.none(FailureReason.SUPPLY_TOO_WEAK);

    @Test
    void holdsAValueOrATrouble() {
        Solution two = Solution.of(2);
        assertTrue(two.isPresent());
        assertEquals(2, two.value());
        assertThrows(NoSuchElementException.class, two::trouble);
        assertFalse(NONE.isPresent());
        assertEquals(FailureReason.SUPPLY_TOO_WEAK, NONE.trouble());
        assertThrows(NoSuchElementException.class, NONE::value);
    }

    @Test
    void mapsTheValueAndKeepsTheTrouble() {
        assertEquals(Solution.of(6), Solution.of(2).map(x -> 3 * x));
        assertEquals(NONE, NONE.map(x -> 3 * x));
        assertEquals(NONE, Solution.of(2).flatMap(x -> NONE));
        assertEquals(NONE, NONE.flatMap(Solution::of));
        assertEquals(2, Solution.of(2).orElse(7));
        assertEquals(7, NONE.orElse(7));
        assertThrows(DomainException.class, () -> Solution.of(0).map(x -> 1 / x));
    }

    @Test
    void solutionsAreEqualByValue() {
        assertEquals(Solution.of(2).hashCode(), Solution.of(2).hashCode());
        assertNotEquals(Solution.of(2).hashCode(), Solution.of(3).hashCode());
        assertNotEquals(Solution.of(0).hashCode(), NONE.hashCode());
        assertNotEquals(Solution.of(0), NONE);
        assertNotEquals(NONE, Solution.none(FailureReason.NO_POWER));
        assertNotEquals(Solution.of(2), Solution.of(3));
        assertEquals("2.0", Solution.of(2).toString());
        assertEquals("SUPPLY_TOO_WEAK", NONE.toString());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double value) {
        DomainException refused = assertThrows(DomainException.class, () -> Solution.of(value));
        assertEquals(FailureReason.NOT_FINITE, refused.trouble());
        assertEquals("value", refused.argument());
        assertEquals(value, refused.value());
        assertTrue(String.valueOf(refused.getMessage()).contains("NOT_FINITE"));
    }
}
