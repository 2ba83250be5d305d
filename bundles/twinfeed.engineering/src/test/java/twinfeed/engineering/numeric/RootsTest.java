// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RootsTest {
    @Test
    void bracketedFindsARoot() {
        assertEquals(Math.sqrt(2), Roots.bracketed(x -> x * x - 2, 0, 2, 1e-14).value(), 1e-13);
        assertEquals(0, Roots.bracketed(x -> x, 0, 2, 1e-14).value());
        assertEquals(2, Roots.bracketed(x -> x - 2, 0, 2, 1e-14).value());
    }

    @Test
    void bracketedNamesItsTrouble() {
        assertEquals(Solution.none(FailureReason.NO_SIGN_CHANGE), Roots.bracketed(x -> x * x + 1, -1, 1, 1e-14));
        assertThrows(DomainException.class, () -> Roots.bracketed(x -> x, 1, 0, 1e-14));
        assertThrows(DomainException.class, () -> Roots.bracketed(x -> x, 0, 1, 0));
        assertThrows(DomainException.class, () -> Roots.bracketed(x -> 1 / x, 0, 1, 1e-9));
        assertThrows(DomainException.class, () -> Roots.bracketed(x -> x, Double.NaN, 1, 1e-9));
    }

    @Test
    void risingFindsARoot() {
        SlopedFunction cube = (x, at) -> at.set(x * x * x - 5, 3 * x * x);
        assertEquals(Math.cbrt(5), Roots.rising(cube, 0, 5, 4.9, new SlopedValue()), 1e-14);
        assertEquals(Math.cbrt(5), Roots.rising(cube, 0, 5, -3, new SlopedValue()), 1e-14);
    }

    @Test
    void risingFindsAJump() {
        SlopedFunction jump = (x, at) -> at.set(x < 0.3 ? x - 1 : x + 1, 1);
        assertEquals(0.3, Roots.rising(jump, 0, 5, 2, new SlopedValue()), 1e-15);
    }

    @Test
    void risingSurvivesAStepToTheEndOfItsBracket() {
        // A kink whose right side points exactly at the lower end: plain Newton would go to and fro for ever.
        int[] evaluations = {0};
        SlopedFunction kink = (x, at) -> {
            evaluations[0]++;
            at.set(x < 1 ? 2 * (x - 1) : x - 1, x < 1 ? 2.0 / 3 : 1);
        };
        assertEquals(1, Roots.rising(kink, 0, 4, 3, new SlopedValue()), 1e-12);
        assertTrue(evaluations[0] < 80, () -> "evaluations: " + evaluations[0]);
    }

    @Test
    void risingStartsFromAGuessInsideTheBracketAndFromTheMiddleOtherwise() {
        assertEquals(0.25, firstTried(0.25));
        for (double guess : new double[] {-1, 0, 4, 9, Double.NaN}) {
            assertEquals(2, firstTried(guess));
        }
    }

    private static double firstTried(double guess) {
        List<Double> tried = new ArrayList<>();
        Roots.rising(
                (x, at) -> {
                    tried.add(x);
                    at.set(x - 1, 1);
                },
                0,
                4,
                guess,
                new SlopedValue());
        return tried.get(0);
    }

    @Test
    void risingTakesNewtonStepsWhereTheyAreGood() {
        int[] evaluations = {0};
        SlopedFunction cube = (x, at) -> {
            evaluations[0]++;
            at.set(x * x * x - 5, 3 * x * x);
        };
        assertEquals(Math.cbrt(5), Roots.rising(cube, 0, 5, 1.7, new SlopedValue()), 1e-14);
        // Newton doubles the right digits with each step; bisection to 1e-7 would take 25.
        assertTrue(evaluations[0] <= 5, () -> "evaluations: " + evaluations[0]);
    }

    @Test
    void risingHalvesTheBracketWhereANewtonStepWouldLeaveIt() {
        List<Double> tried = new ArrayList<>();
        // The tangent at 3 points far below 0: the middle between 0 and 3 is next.
        SlopedFunction steep = (x, at) -> {
            tried.add(x);
            at.set(x < 2 ? x - 1 : x * x, x < 2 ? 1 : 0.1);
        };
        assertEquals(1, Roots.rising(steep, 0, 4, 3, new SlopedValue()), 1e-14);
        assertEquals(List.of(3.0, 1.5), tried.subList(0, 2));
        tried.clear();
        // And the one at 0.5 points far above 4: the middle between 0.5 and 4 is next.
        SlopedFunction flat = (x, at) -> {
            tried.add(x);
            at.set(x < 1 ? -1 : x - 2, x < 1 ? 0.1 : 1);
        };
        assertEquals(2, Roots.rising(flat, 0, 4, 0.5, new SlopedValue()), 1e-14);
        assertEquals(List.of(0.5, 2.25), tried.subList(0, 2));
    }

    @Test
    void risingTakesAFlatFunctionAndAnEmptyBracket() {
        SlopedFunction flat = (x, at) -> at.set(0, 0);
        double root = Roots.rising(flat, 0, 1, 0.25, new SlopedValue());
        assertTrue(root >= 0 && root <= 1);
        assertEquals(1, Roots.rising((x, at) -> at.set(x - 1, 1), 1, 1, 1, new SlopedValue()));
    }
}
