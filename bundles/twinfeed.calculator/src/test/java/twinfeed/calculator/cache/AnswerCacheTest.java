// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Intake;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.rules.RuleSets;

/** Which answers are kept, and which are evicted. */
class AnswerCacheTest {
    private static final Grid GRID = new Grid(List.of(new Intake(0, 5)), new double[] {230}, 0, List.of());

    private static CalculatorInputs inputs(String calculator) {
        return new CalculatorInputs(
                List.of(calculator, "1"),
                List.of(),
                List.of(),
                List.of(),
                RuleSets.find(RuleSets.DEFAULT).orElseThrow(),
                Set.of(),
                Set.of());
    }

    private static ReadingPositions at(double position) {
        return new ReadingPositions(new double[] {position}, GRID, new SharedQuantities(GRID), List.of());
    }

    private static CalculatorAnswer answer(double margin) {
        return new CalculatorAnswer(
                List.of(new CheckMargin("made.up", margin >= 0, margin)), new SharedQuantities(GRID));
    }

    @Test
    void anAnswerIsKeptForItsInputsAndWhereTheReadingsStand() {
        AnswerCache cache = new AnswerCache();
        CalculatorAnswer answer = answer(2);
        cache.answersFor(inputs("water")).put(at(1), answer);
        assertSame(answer, cache.answersFor(inputs("water")).get(at(1)));
        assertNull(cache.answersFor(inputs("water")).get(at(-1)));
        assertNull(cache.answersFor(inputs("cable")).get(at(1)));
        assertEquals(1, cache.size());
    }

    @Test
    void theFirstAnswerStays() {
        AnswerCache cache = new AnswerCache();
        CalculatorAnswer first = answer(2);
        cache.answersFor(inputs("water")).put(at(1), first);
        cache.answersFor(inputs("water")).put(at(1), answer(2));
        assertSame(first, cache.answersFor(inputs("water")).get(at(1)));
        assertEquals(1, cache.size(), "one place is counted once");
    }

    @Test
    void theLeastRecentlyUsedInputsAreEvicted() {
        AnswerCache cache = new AnswerCache(3);
        cache.answersFor(inputs("water")).put(at(1), answer(1));
        cache.answersFor(inputs("water")).put(at(2), answer(1));
        cache.answersFor(inputs("cable")).put(at(1), answer(1));
        cache.answersFor(inputs("water"));
        cache.answersFor(inputs("load")).put(at(1), answer(1));
        assertNull(cache.answersFor(inputs("cable")).get(at(1)));
        assertEquals(3, cache.size());
        assertEquals(
                answer(1).margins(),
                cache.answersFor(inputs("water")).get(at(2)).margins());
    }

    @Test
    void whatIsEvictedTakesUpNoRoom() {
        AnswerCache cache = new AnswerCache(1);
        AnswerCache.Answers old = cache.answersFor(inputs("water"));
        old.put(at(1), answer(1));
        cache.answersFor(inputs("cable")).put(at(1), answer(1));
        assertNull(old.get(at(1)));
        old.put(at(2), answer(1));
        assertNull(old.get(at(2)));
        assertEquals(1, cache.size());
        assertNotSame(old, cache.answersFor(inputs("water")));
    }

    @Test
    void theAnswersThatAreBeingMadeStay() {
        AnswerCache cache = new AnswerCache(1);
        AnswerCache.Answers answers = cache.answersFor(inputs("water"));
        answers.put(at(1), answer(1));
        answers.put(at(2), answer(1));
        assertEquals(2, cache.size(), "one house with more answers than fit is judged all the same");
    }
}
