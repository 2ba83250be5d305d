// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each message is used, and each text literal that looks like a message's key has a message. */
class MessagesTest {
    private static final Pattern LITERAL = Pattern.compile("\"([a-zA-Z][a-zA-Z0-9.-]*)\"");
    private static final Pattern ASKED = Pattern.compile(
            "(?:text|say|new (?:Quote|Life)Exception|MESSAGES[.]get)\\(\\s*(?:locale, |all, )?\"([a-zA-Z0-9.-]+)\"\\s*[,)]");

    private static String sources(String folder) throws IOException {
        Path root = Path.of("src/main/java/twinfeed/pricing").resolve(folder);
        try (Stream<Path> files = Files.list(root)) {
            StringBuilder all = new StringBuilder();
            for (Path file : files.filter(one -> one.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                all.append(Files.readString(file));
            }
            assertTrue(all.length() > 10_000, "the sources were found");
            return all.toString();
        }
    }

    private static Set<String> keys(String folder) throws IOException {
        Set<String> keys = keys(folder, "messages.properties");
        if (folder.isEmpty()) {
            keys.addAll(keys("texts", "standing-texts.properties"));
        }
        return keys;
    }

    private static Set<String> keys(String folder, String name) throws IOException {
        String path = "/twinfeed/pricing/" + (folder.isEmpty() ? "" : folder + "/") + name;
        Properties properties = new Properties();
        try (var in = Objects.requireNonNull(MessagesTest.class.getResourceAsStream(path), path)) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return new TreeSet<>(properties.stringPropertyNames());
    }

    /** A key without what says which side of a trouble it is, and without what stands before the speaking part. */
    private static String bare(String key) {
        return key.replaceFirst("^trouble[.]", "").replaceFirst("[.](wrong|right)$", "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "book", "life"})
    void everyMessageIsUsed(String folder) throws IOException {
        Matcher matcher = LITERAL.matcher(sources(folder));
        Set<String> literals = matcher.results().map(one -> one.group(1)).collect(Collectors.toSet());
        Set<String> unused = keys(folder).stream()
                .filter(key -> !literals.contains(bare(key)) && !madeUp(key, literals))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), unused);
    }

    /** Keys that are put together from a beginning and a key of the model. */
    private static boolean madeUp(String key, Set<String> literals) {
        for (int dot = key.indexOf('.'); dot > 0; dot = key.indexOf('.', dot + 1)) {
            if (literals.contains(key.substring(0, dot + 1))) {
                return true;
            }
        }
        // suits.heater and the like: verdict and subject.
        return key.startsWith("option.text.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "life"})
    void everyMessageAskedForIsThere(String folder) throws IOException {
        Set<String> bare = keys(folder).stream().map(MessagesTest::bare).collect(Collectors.toSet());
        Set<String> asked = ASKED.matcher(sources(folder))
                .results()
                .map(one -> one.group(1))
                .filter(key -> !key.endsWith("."))
                .filter(key -> !bare.contains(key) && !bare.contains("option.text." + key))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), asked);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "book", "life"})
    void whatIsWrongAlsoSaysWhatWouldBeRight(String folder) throws IOException {
        Set<String> keys = keys(folder);
        Set<String> notices = Set.of("belowCost.wrong", "onEnquiry.wrong", "labourOnly.wrong");
        for (String key : keys) {
            if (key.endsWith(".wrong") && !notices.contains(key)) {
                assertTrue(keys.contains(key.replace(".wrong", ".right")), key);
            }
        }
    }
}
