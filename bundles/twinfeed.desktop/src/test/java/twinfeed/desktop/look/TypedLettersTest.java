// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

final class TypedLettersTest {
    private static final List<String> ANSWERS = List.of(
            "not recorded", "Circuit-breaker, type B", "Circuit-breaker, type C", "Cartridge fuse", "Rewirable fuse");

    private final TypedLetters letters = new TypedLetters();
    private long clock = 100_000;

    private int type(String text, int present) {
        int now = present;
        for (char letter : text.toCharArray()) {
            clock += 150;
            now = letters.next(letter, clock, ANSWERS, now);
        }
        return now;
    }

    @Test
    void lettersLeadToTheAnswerThatBeginsWithThem() {
        assertEquals(4, type("re", 0));
    }

    @Test
    void lettersThatFollowSoonBelongTogether() {
        assertEquals(3, type("ca", 0));
        clock += 5_000;
        assertEquals(1, type("c", 0), "after a pause they begin anew");
    }

    @Test
    void sameLetterAgainGoesOn() {
        assertEquals(2, type("cc", 0));
        assertEquals(3, type("c", 2));
    }

    @Test
    void laterWordIsFoundWhereNoneBeginsSo() {
        assertEquals(3, type("fus", 0));
    }

    @Test
    void lettersThatLeadNowhereChangeNothing() {
        assertEquals(2, type("x", 2));
    }
}
