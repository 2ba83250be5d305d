// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A package of more than twenty classes says in its package-info why it is not divided. */
class PackageSizeTest {
    private static final int MOST = 20;
    /** Begins the sentence that gives the reason. */
    private static final String REASON = "More than twenty classes:";

    @Test
    void noPackageIsLargeWithoutAReason() throws IOException {
        Map<Path, Long> sizes = Stream.of("bundles", "releng")
                .flatMap(folder -> Project.files(Project.ROOT.resolve(folder), ".java").stream())
                .filter(file -> !file.endsWith("package-info.java"))
                .filter(file -> {
                    String path = file.toString().replace('\\', '/');
                    return !path.contains("/src/test/") && !path.contains(".tests/");
                })
                .collect(Collectors.groupingBy(Path::getParent, TreeMap::new, Collectors.counting()));
        assertTrue(sizes.size() > 40, "packages: " + sizes.size());
        Map<String, Long> large = new TreeMap<>();
        for (Map.Entry<Path, Long> size : sizes.entrySet()) {
            Path info = size.getKey().resolve("package-info.java");
            if (size.getValue() > MOST
                    && !(Files.exists(info) && Files.readString(info).contains(REASON))) {
                large.put(Project.ROOT.relativize(size.getKey()).toString(), size.getValue());
            }
        }
        assertEquals(Map.of(), large);
    }
}
