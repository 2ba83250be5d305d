// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** In which size a document is set, and what is set to find out: each setting takes a good part of a second when a program has just begun. */
class PagesTest {
    private final List<String> settings = new ArrayList<>();

    /**
     * A document.
     *
     * @param text pages of what has to be read, in each size
     * @param signedOn the page of the box to sign in each size, 0 without one
     * @param front pages of the front in each size
     */
    private record Paper(List<Integer> text, List<Integer> signedOn, List<Integer> front) {}

    private static final List<Double> SIZES = List.of(9.0, 8.0, 7.0);

    private Typesetter.Set set(String what, double size, int pages, int signedOn) {
        settings.add(what + " " + (int) size);
        return new Typesetter.Set(new byte[0], pages, signedOn, List.of(what + " " + (int) size));
    }

    /** Which setting was taken. */
    private String fitting(Paper paper) throws IOException {
        settings.clear();
        return Pages.fitting(
                        SIZES,
                        size -> set("whole", size, 9, 1),
                        size -> set(
                                "text",
                                size,
                                paper.text.get(SIZES.indexOf(size)),
                                paper.signedOn.get(SIZES.indexOf(size))),
                        size -> set("front", size, paper.front.get(SIZES.indexOf(size)), 0))
                .remarks()
                .get(0);
    }

    @Test
    void whatFitsAtOnceIsSetTwice() throws IOException {
        assertEquals("whole 9", fitting(new Paper(List.of(2), List.of(1), List.of())));
        assertEquals(List.of("text 9", "whole 9"), settings);
    }

    @Test
    void lettersGetSmallerUntilTheBoxStandsOnTheFirstPageAndTheTextFitsTwo() throws IOException {
        assertEquals("whole 7", fitting(new Paper(List.of(3, 2, 2), List.of(1, 2, 1), List.of())));
        assertEquals(List.of("text 9", "text 8", "text 7", "whole 7"), settings);
    }

    @Test
    void withoutABoxToSignTheFrontIsSetToo() throws IOException {
        assertEquals("whole 8", fitting(new Paper(List.of(2, 2), List.of(0, 0), List.of(2, 1))));
        assertEquals(List.of("text 9", "front 9", "text 8", "front 8", "whole 8"), settings);
        assertEquals("whole 8", fitting(new Paper(List.of(3, 2), List.of(0, 0), List.of(1, 1))));
        assertEquals(List.of("text 9", "text 8", "front 8", "whole 8"), settings, "three pages are too many anyway");
    }

    @Test
    void onePageHasItsFrontOnTheFirst() throws IOException {
        assertEquals("whole 9", fitting(new Paper(List.of(1), List.of(0), List.of())));
        assertEquals(List.of("text 9", "whole 9"), settings);
    }

    @Test
    void whereTheTextNeverFitsTheFirstSizeStandsInWhichTheFrontDoes() throws IOException {
        assertEquals("whole 8", fitting(new Paper(List.of(4, 3, 3), List.of(2, 1, 1), List.of())));
        assertEquals("whole 9", fitting(new Paper(List.of(4, 4, 4), List.of(2, 2, 2), List.of())));
        assertEquals("whole 8", fitting(new Paper(List.of(4, 3, 3), List.of(0, 0, 0), List.of(2, 1, 1))));
        assertEquals(List.of("text 9", "text 8", "text 7", "front 9", "front 8", "whole 8"), settings);
    }
}
