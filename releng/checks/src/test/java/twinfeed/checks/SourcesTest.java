// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A figure that is said to have been read somewhere names where, so that somebody else can look: a standard with its number, or a work
 * with its publisher. What cannot be traced is from memory.
 */
class SourcesTest {
    private static final Pattern READ = Pattern.compile("\\(read\\)|[,;]\\s*read\\s*$");

    private static final Pattern NAMED = Pattern.compile(
            "\\b(BS|EN|IEC|VDE|ISO|NFPA|SAP) ?\\d|EnergyPlus \\(US Department of Energy\\)|\\bfluids, ");

    /** Words for a source that nobody can find again. */
    private static final Pattern VAGUE = Pattern.compile(
            "\\b(a published|public|published (advice|article|example|note|worked)|forum|magazine|web ?page|handbook page|the same|same)\\b",
            Pattern.CASE_INSENSITIVE);

    private static List<String> readFigures() throws IOException {
        List<String> found = new ArrayList<>();
        for (String bundle : Project.bundles()) {
            try (Stream<Path> files = Files.walk(Project.bundle(bundle).resolve("src"))) {
                for (Path file :
                        files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                    Files.readAllLines(file).stream()
                            .filter(line ->
                                    !line.startsWith("#") && READ.matcher(line).find())
                            .forEach(line -> found.add(file.getFileName() + ": " + line));
                }
            }
        }
        return found;
    }

    @Test
    void aFigureThatWasReadNamesAPlaceThatCanBeFoundAgain() throws IOException {
        List<String> figures = readFigures();
        assertTrue(figures.size() > 15, "only " + figures.size() + " figures are said to have been read");
        assertEquals(
                List.of(),
                figures.stream()
                        .filter(line -> !NAMED.matcher(line).find()
                                || VAGUE.matcher(line).find())
                        .toList());
    }
}
