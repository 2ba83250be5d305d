// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts that stand in files beside the tests and were read line by line. */
public final class ExpectedText {
    private ExpectedText() {}

    /** Fails where a text differs from its file; the text as it is now is then in {@code target/texts}. */
    public static void same(Class<?> beside, String file, String text) throws IOException {
        String expected = "";
        try (InputStream stream = beside.getResourceAsStream(file)) {
            if (stream != null) {
                expected = new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
            }
        }
        if (!expected.equals(text)) {
            Path found = Path.of("target", "texts").resolve(file);
            Files.createDirectories(found.resolveSibling(""));
            Files.writeString(found, text);
        }
        assertEquals(expected, text, file);
    }
}
