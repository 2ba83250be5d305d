// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The words of the safe isolation stand in one place and in its steps; nothing says that a unit is proved dead before its cover is off. */
class IsolationWordsTest {
    private static final Pattern OLD = Pattern.compile("(?i)lock off|prove dead|proving dead|before a cover comes off");
    private static final Pattern STEPS = Pattern.compile("prove the tester|Spannungsprüfer (?:prüfen|erneut)");

    @Test
    void theIsolationIsWordedInOnePlace() throws IOException {
        List<Path> files = messages();
        assertTrue(files.size() > 20, "files of messages: " + files.size());
        assertEquals(List.of(), matching(files, OLD));
        assertEquals(
                List.of(
                        "Diagnosis.properties",
                        "Diagnosis_de.properties",
                        "SafeIsolation.properties",
                        "SafeIsolation_de.properties"),
                matching(files, STEPS));
    }

    private static List<String> matching(List<Path> files, Pattern words) {
        return files.stream()
                .filter(file -> words.matcher(read(file)).find())
                .map(file -> file.getFileName().toString())
                .sorted()
                .toList();
    }

    private static List<Path> messages() {
        return Project.files(Project.ROOT.resolve("bundles"), ".properties").stream()
                .filter(file -> file.toString().replace('\\', '/').contains("/src/main/resources/"))
                .toList();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }
}
