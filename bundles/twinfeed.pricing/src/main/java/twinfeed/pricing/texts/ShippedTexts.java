// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.texts;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The standing texts that come with the program, a property file for each language beside this class. */
final class ShippedTexts {
    private static final String BASE = "standing-texts";

    /** What was read, by name of the file: every quote asks for it. */
    private static final Map<String, Map<String, String>> READ = new ConcurrentHashMap<>();

    private ShippedTexts() {}

    /** All texts by key; what a language lacks is English. */
    static Map<String, String> of(java.util.Locale locale) {
        Map<String, String> texts = new TreeMap<>(file(BASE + ".properties"));
        if (!locale.getLanguage().isEmpty()) {
            texts.putAll(file(BASE + "_" + locale.getLanguage() + ".properties"));
        }
        return texts;
    }

    private static Map<String, String> file(String name) {
        return READ.computeIfAbsent(name, ShippedTexts::read);
    }

    private static Map<String, String> read(String name) {
        try (@Nullable InputStream stream = ShippedTexts.class.getResourceAsStream(name)) {
            return stream == null ? Map.of() : read(new InputStreamReader(stream, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(name, unreadable);
        }
    }

    /** Keys and texts of a property file; blanks around a text are no part of it. */
    static Map<String, String> read(Reader reader) throws IOException {
        Properties properties = new Properties();
        properties.load(reader);
        Map<String, String> texts = new TreeMap<>();
        properties
                .stringPropertyNames()
                .forEach(key -> texts.put(key, properties.getProperty(key).strip()));
        return texts;
    }
}
