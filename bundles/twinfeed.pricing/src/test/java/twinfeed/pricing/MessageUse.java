// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

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
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How the sources of a package use its messages.
 *
 * @param sources all its sources, one after the other
 * @param keys the keys of its messages
 */
public record MessageUse(String sources, Set<String> keys) {
    private static final Pattern LITERAL = Pattern.compile("\"([a-zA-Z][a-zA-Z0-9.-]*)\"");
    private static final Pattern ASKED = Pattern.compile(
            "(?:text|say|new (?:Quote|Life)Exception|MESSAGES[.](?:get|inOrder))\\(\\s*(?:locale, |all, )?\"([a-zA-Z0-9.-]+)\"\\s*[,)]");

    /**
     * Of a package, its messages beside it.
     *
     * @param files names of its message files, with the folder below it if they lie in one
     */
    public static MessageUse of(String packageName, String... files) throws IOException {
        String folder = packageName.replace('.', '/');
        Set<String> keys = new TreeSet<>();
        for (String file : files) {
            String path = "/" + folder + "/" + file;
            Properties properties = new Properties();
            try (var in = Objects.requireNonNull(MessageUse.class.getResourceAsStream(path), path)) {
                properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
            keys.addAll(properties.stringPropertyNames());
        }
        return new MessageUse(read(Path.of("src/main/java").resolve(folder)), keys);
    }

    private static String read(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
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

    /** A key without what says whether it tells what is wrong or what would be right, and without what stands before. */
    private static String bare(String key) {
        return key.replaceFirst("^trouble[.]", "").replaceFirst("[.](wrong|right)$", "");
    }

    /** Keys that no text literal names, in whole or by their beginning. */
    public Set<String> unused() {
        Set<String> literals =
                LITERAL.matcher(sources).results().map(one -> one.group(1)).collect(Collectors.toSet());
        return keys.stream()
                .filter(key -> !literals.contains(bare(key)) && !madeUp(key, literals))
                .collect(Collectors.toCollection(TreeSet::new));
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

    /** Keys that the sources ask for and that have no message. */
    public Set<String> missing() {
        Set<String> bare = keys.stream().map(MessageUse::bare).collect(Collectors.toSet());
        return ASKED.matcher(sources)
                .results()
                .map(one -> one.group(1))
                .filter(key -> !key.endsWith("."))
                .filter(key -> !bare.contains(key) && !bare.contains("option.text." + key))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Keys that say what is wrong without a companion that says what would be right. */
    public Set<String> withoutRemedy() {
        return keys.stream()
                .filter(key -> key.endsWith(".wrong") && !keys.contains(key.replace(".wrong", ".right")))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
