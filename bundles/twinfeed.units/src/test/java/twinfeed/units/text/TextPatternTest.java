// SPDX-License-Identifier: EPL-2.0
package twinfeed.units.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** No placeholder reaches a reader. */
class TextPatternTest {
    private static final String BOARD = "New consumer unit, with {device} of {rating:0} A for the shower";

    @Test
    void aValueThatIsNotThereIsAGap() {
        String before = System.getProperty(TextPattern.STRICT, "false");
        try {
            System.setProperty(TextPattern.STRICT, "false");
            assertEquals(
                    "New consumer unit, with … of 100 A for the shower",
                    TextPattern.fill(BOARD, Map.of("rating", 100), Locale.ENGLISH));
            System.setProperty(TextPattern.STRICT, "true");
            String message = assertThrows(
                            IllegalStateException.class,
                            () -> TextPattern.fill(BOARD, Map.of("rating", 100), Locale.ENGLISH))
                    .getMessage();
            assertTrue(message.contains("{device}") && message.contains("[rating]"), message);
        } finally {
            System.setProperty(TextPattern.STRICT, before);
        }
    }

    @Test
    void aPatternIsFilledByAllItsArgumentsOnly() {
        assertTrue(TextPattern.complete(BOARD, Set.of("rating", "device")));
        assertFalse(TextPattern.complete(BOARD, Set.of("rating")));
        assertTrue(TextPattern.complete("nothing to fill", Set.of()));
    }

    /** A figure that is whole is not given places; half a degree is not none. */
    @Test
    void placesThatAreOnlyAllowedAreLeftOutWhereTheySayNothing() {
        assertEquals("0.5 °C", TextPattern.fill("{t:~1} °C", Map.of("t", 0.5), Locale.ENGLISH));
        assertEquals("5 °C", TextPattern.fill("{t:~1} °C", Map.of("t", 5.0), Locale.ENGLISH));
        assertEquals("18,4 °C", TextPattern.fill("{t:~1} °C", Map.of("t", 18.43), Locale.GERMAN));
    }
}
