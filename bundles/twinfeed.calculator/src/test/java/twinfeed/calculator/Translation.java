// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Holds message files of another language against those of the default language, for the tests of all bundles with messages. */
public final class Translation {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{[^}]*}");

    private Translation() {}

    /**
     * German has every key of the default language and no other, each with the same placeholders (name and decimals), and says
     * it in words of its own.
     *
     * @param anchor class beside which the files are
     * @param base their name without language and ending
     * @param same all keys whose message is the same in both languages
     */
    public static void assertGerman(Class<?> anchor, String base, String... same) {
        SortedMap<String, String> english = read(anchor, base + ".properties");
        SortedMap<String, String> german = read(anchor, base + "_de.properties");
        assertFalse(english.isEmpty(), base);
        assertEquals(english.keySet(), german.keySet(), base + ": keys");
        Set<String> alike = new TreeSet<>();
        english.forEach((key, text) -> {
            String translated = german.getOrDefault(key, "");
            assertEquals(placeholders(text), placeholders(translated), base + ": " + key);
            if (text.equals(translated)) {
                alike.add(key);
            }
        });
        assertEquals(new TreeSet<>(Set.of(same)), alike, base + ": messages that are the same in both languages");
    }

    private static Set<String> placeholders(String text) {
        return PLACEHOLDER
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static SortedMap<String, String> read(Class<?> anchor, String name) {
        Properties properties = new Properties();
        try (InputStream in = Objects.requireNonNull(anchor.getResourceAsStream(name), name)) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(name, unreadable);
        }
        SortedMap<String, String> messages = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> messages.put(key, properties.getProperty(key)));
        return messages;
    }
}
