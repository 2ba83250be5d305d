// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The rule sets that are there. Each is a folder of data files whose {@code numbers.csv} holds title, caution and single
 * numbers; adding one needs its folder and a line in {@code index.csv}, and no code.
 *
 * <p>A user's own rule sets lie in a folder that the system property {@link #FOLDER} names: each sub-folder with the same files
 * is one, and its name is its id. The folder is looked at once for each value of the property.
 */
public final class RuleSets {
    /** Id of the rule set that is used where a survey names none. */
    public static final String DEFAULT = "bs7671-2018-a2";

    /** System property that names the folder of the user's own rule sets. */
    public static final String FOLDER = "twinfeed.rules";

    private static final Map<String, RuleShelf> SHELVES = new ConcurrentHashMap<>();

    private RuleSets() {}

    /**
     * The ids: those that come with the program in the order of the index, then the user's own by name.
     *
     * @throws IllegalArgumentException if the user's folder cannot be read or takes an id that is there
     */
    public static List<String> ids() {
        return shelf().ids();
    }

    /**
     * A rule set, or empty if there is none of that id.
     *
     * @throws IllegalArgumentException if one of its data files is missing or wrong; the message names file, row and column
     */
    public static Optional<RuleSet> find(String id) {
        return shelf().find(id);
    }

    /** The rule set that is used where a survey names none. */
    public static RuleSet standard() {
        return find(DEFAULT).orElseThrow(() -> new IllegalStateException("rule set " + DEFAULT + " is missing"));
    }

    private static RuleShelf shelf() {
        return SHELVES.computeIfAbsent(System.getProperty(FOLDER, ""), RuleSets::open);
    }

    private static RuleShelf open(String folder) {
        List<String> own = built("index", "index.csv").rows().stream()
                .map(row -> row.getOrDefault("id", ""))
                .toList();
        return new RuleShelf(own, folder.isEmpty() ? null : Path.of(folder));
    }

    /** A data file that comes with the program. */
    static Table built(String name, String file) {
        try (InputStream stream = RuleSets.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("rule data " + file + " is missing");
            }
            return Table.read(name, stream);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("rule data " + file, unreadable);
        }
    }

    /** A data file of the user. */
    static Table foreign(Path file) {
        try (InputStream stream = Files.newInputStream(file)) {
            return Table.read(file.toString(), stream);
        } catch (IOException | UncheckedIOException unreadable) {
            throw RuleRefusal.of(
                    unreadable,
                    "file.unreadable",
                    file,
                    "numbers.csv, " + String.join(".csv, ", RuleSet.TABLES) + ".csv");
        }
    }
}
