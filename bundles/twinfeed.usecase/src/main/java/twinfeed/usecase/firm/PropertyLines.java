// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.firm;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import twinfeed.model.io.InputBytes;

/** Property files as people read them: UTF-8, one {@code key = text} a line, no date. */
final class PropertyLines {
    private static final int MOST_MIB = 1;

    private PropertyLines() {}

    /** The content of a file by key. */
    static Map<String, String> read(Path file) {
        String text = new String(InputBytes.read(file, MOST_MIB), StandardCharsets.UTF_8);
        Properties properties = new Properties();
        try {
            properties.load(new StringReader(text.startsWith("\ufeff") ? text.substring(1) : text));
        } catch (IOException fromMemory) {
            throw new UncheckedIOException(fromMemory);
        }
        Map<String, String> values = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> values.put(key, properties.getProperty(key)));
        return values;
    }

    /** The content of a file that {@link #read} takes for the same values. */
    static byte[] write(Map<String, String> values) {
        StringBuilder text = new StringBuilder();
        values.forEach((key, value) ->
                text.append(key).append(" = ").append(escaped(value)).append('\n'));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Blanks at the beginning and the ends of lines have to be marked; everything else stands as it is. */
    private static String escaped(String value) {
        String escaped = value.replace("\\", "\\\\")
                .replace("\r\n", "\n")
                .replace("\n", "\\n")
                .replace("\r", "\\n")
                .replace("\t", "\\t")
                .replace("\f", "\\f");
        return escaped.startsWith(" ") ? "\\" + escaped : escaped;
    }
}
