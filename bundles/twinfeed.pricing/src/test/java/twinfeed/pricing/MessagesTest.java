// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each message is used, and each text literal that looks like a message's key has a message. */
class MessagesTest {
    private static MessageUse lines() throws IOException {
        return MessageUse.of("twinfeed.pricing", "messages.properties", "texts/standing-texts.properties");
    }

    private static MessageUse book() throws IOException {
        return MessageUse.of("twinfeed.pricing.book", "messages.properties");
    }

    @Test
    void everyMessageIsUsed() throws IOException {
        // Those are named by the data, work-texts.csv.
        assertEquals(Set.of("exclusion.operator", "exclusion.operatorEarth", "term.pump"), lines().unused());
        assertEquals(Set.of(), book().unused());
    }

    @Test
    void everyMessageAskedForIsThere() throws IOException {
        assertEquals(Set.of(), lines().missing());
    }

    @Test
    void whatIsWrongAlsoSaysWhatWouldBeRight() throws IOException {
        assertEquals(Set.of(), lines().withoutRemedy());
        // What is only told needs no remedy.
        assertEquals(Set.of("belowCost.wrong", "onEnquiry.wrong", "labourOnly.wrong"), book().withoutRemedy());
    }
}
