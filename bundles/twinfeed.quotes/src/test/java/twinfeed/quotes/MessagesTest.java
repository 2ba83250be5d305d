// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.pricing.MessageUse;

/** Each message is used, each one asked for is there, and what is wrong also says what would be right. */
class MessagesTest {
    @Test
    void messagesAndSourcesAgree() throws IOException {
        MessageUse use = MessageUse.of("twinfeed.quotes", "messages.properties");
        assertEquals(Set.of(), use.unused());
        assertEquals(Set.of(), use.missing());
        assertEquals(Set.of(), use.withoutRemedy());
    }
}
