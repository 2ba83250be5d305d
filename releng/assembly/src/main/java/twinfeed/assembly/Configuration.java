// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The settings by which the framework starts: which bundles it installs, at which level each starts, which application it runs.
 *
 * @param settings by name
 */
record Configuration(Map<String, String> settings) {
    private static final String BUNDLES = "osgi.bundles";

    static Configuration read(Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader text = Files.newBufferedReader(file)) {
            properties.load(text);
        }
        Map<String, String> settings = new TreeMap<>();
        properties.stringPropertyNames().forEach(name -> settings.put(name, properties.getProperty(name)));
        return new Configuration(settings);
    }

    /** Without what only an installer reads and what the launcher does by itself. */
    Configuration desktop() {
        Map<String, String> kept = new TreeMap<>(settings);
        kept.keySet().removeIf(name -> name.startsWith("eclipse.p2.") || name.startsWith("osgi.framework"));
        return new Configuration(kept);
    }

    /**
     * The settings of the command line: these bundles alone, at the levels that they have here.
     *
     * @param wanted symbolic names; one that is not among the bundles here is an error
     * @param rest file of all other settings
     * @throws IOException if the file cannot be read, or a bundle is missing
     */
    Configuration headless(Set<String> wanted, Path rest) throws IOException {
        Map<String, String> chosen = new TreeMap<>(read(rest).settings);
        Set<String> missing = new TreeSet<>(wanted);
        missing.remove("org.eclipse.osgi"); // the framework itself
        chosen.put(
                BUNDLES,
                entries()
                        .filter(entry -> wanted.contains(symbolicName(entry)))
                        .peek(entry -> missing.remove(symbolicName(entry)))
                        .collect(Collectors.joining(",")));
        if (!missing.isEmpty()) {
            throw new IOException("the product lacks " + missing);
        }
        return new Configuration(chosen);
    }

    private java.util.stream.Stream<String> entries() {
        return java.util.Arrays.stream(settings.getOrDefault(BUNDLES, "").split(","));
    }

    /** Of {@code reference:file:NAME_VERSION.jar@LEVEL:start}; the version is the first that looks like one. */
    private static String symbolicName(String entry) {
        return entry.replaceFirst("^reference:file:", "").replaceFirst("_\\d+\\.\\d+\\.\\d+.*$", "");
    }

    /** As a properties file without the date that {@link Properties#store} would write. */
    void write(Path file) throws IOException {
        StringBuilder text = new StringBuilder();
        settings.forEach((name, value) -> text.append(name)
                .append('=')
                .append(value.replace("\\", "\\\\"))
                .append('\n'));
        Files.writeString(file, text);
    }
}
