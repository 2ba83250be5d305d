// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.usecase.UnusableException;

/** The exit status tells a script whether its input or the program is at fault, and the message fits a screen. */
class FailureTest {
    private static final InputProblem PROBLEM = new InputProblem("a.job", 3, "survey", "5 frogs", "no unit", "write m");

    private static Failure many(int count, String wrong) {
        return new Failure(Verbs.UNUSABLE, Collections.nCopies(count, InputProblem.ofFile("", wrong, "")));
    }

    @Test
    void whatIsWrongWithTheInputEndsWithTwo() {
        Failure input = Failure.of(new InputException(List.of(PROBLEM)));
        assertEquals(new Failure(2, List.of(PROBLEM)), input);
        Failure unusable = Failure.of(new UnusableException("no such heater", new IllegalArgumentException()));
        assertEquals(2, unusable.status());
        assertTrue(unusable.lines().get(0).contains("no such heater"), unusable.toString());
        Failure argument = Failure.of(new ArgumentException("power is missing"));
        assertEquals(2, argument.status());
        assertEquals(List.of("power is missing"), argument.lines());
    }

    @Test
    void aFaultOfTheProgramEndsWithThree() {
        Failure full = Failure.of(new OutOfMemoryError());
        assertEquals(3, full.status());
        assertEquals(List.of("internal fault: the memory is full; try a smaller file"), full.lines());
        Failure broken = Failure.of(new IllegalStateException("never"));
        assertEquals(3, broken.status());
        assertEquals(List.of("internal fault: java.lang.IllegalStateException: never"), broken.lines());
    }

    /** 95 lines of 20 letters with their ends are 1995, of which 90 fit in 1900. */
    @Test
    void asManyLinesAsFitAScreenAndHowManyMore() {
        List<String> lines = many(101, "x".repeat(19)).lines();
        assertEquals(96, lines.size());
        assertEquals("... and 6 more; --json names them all", lines.get(95));
        assertEquals(95, many(95, "x".repeat(19)).lines().size());
    }

    @Test
    void oneLongLineIsPrintedAllTheSame() {
        Failure failure = new Failure(
                Verbs.UNUSABLE,
                Collections.nCopies(
                        2,
                        new InputProblem("f".repeat(300), 1, "e".repeat(200), "", "w".repeat(700), "r".repeat(700))));
        List<String> lines = failure.lines();
        assertEquals(2, lines.size());
        assertTrue(lines.get(0).length() > 1_900, "longer than a screen takes");
        assertEquals("... and 1 more; --json names them all", lines.get(1));
    }
}
