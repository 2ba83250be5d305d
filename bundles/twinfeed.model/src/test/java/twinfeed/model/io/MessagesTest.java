// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Properties;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each refusal and each problem has both halves of its text, and each text is a pattern. */
class MessagesTest {

    @ParameterizedTest
    @ValueSource(strings = {"/twinfeed/model/io/messages.properties", "/twinfeed/model/check/messages.properties"})
    void bothHalvesAreThere(String file) throws IOException {
        Properties messages = read(file);
        assertTrue(messages.size() > 40, "messages read: " + messages.size());
        for (String key : messages.stringPropertyNames()) {
            String text = messages.getProperty(key);
            new MessageFormat(text);
            assertFalse(text.isBlank() || text.endsWith(".") && !text.endsWith("..."), key);
            if (key.endsWith(".wrong")) {
                String half = key.substring(0, key.length() - ".wrong".length()) + ".right";
                assertTrue(messages.containsKey(half), half);
            } else if (key.endsWith(".right")) {
                String half = key.substring(0, key.length() - ".right".length()) + ".wrong";
                assertTrue(messages.containsKey(half), half);
            }
        }
    }

    private static Properties read(String file) throws IOException {
        Properties messages = new Properties();
        try (InputStream stream = MessagesTest.class.getResourceAsStream(file)) {
            messages.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
        }
        return messages;
    }
}
