// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every library of the product stands in the notices, with its version and a licence that goes with EPL-2.0. */
class NoticesTest {
    private static final Set<String> COMPATIBLE = Set.of(
            "EPL-2.0",
            "Apache-2.0",
            "BSD-2-Clause",
            "BSD-3-Clause",
            "MIT",
            "EPL-2.0 OR GPL-2.0-with-classpath-exception",
            "Apache-2.0 OR LGPL-2.1-or-later",
            "W3C",
            "EPL-2.0 AND LGPL-2.1-or-later AND MPL-1.1");

    private static final String EMBEDDED = "## Inside the bundle twinfeed.pdf";

    /** The libraries of the part of the notices before or behind the heading of the embedded ones, with their versions. */
    private static Map<String, String> noticed(boolean embedded) throws IOException {
        String text = Files.readString(Project.ROOT.resolve("releng/NOTICES.md"));
        int cut = text.indexOf(EMBEDDED);
        assertTrue(cut > 0, EMBEDDED);
        Map<String, String> noticed = new TreeMap<>();
        List<String> incompatible = new ArrayList<>();
        for (String line : (embedded ? text.substring(cut) : text.substring(0, cut)).split("\n")) {
            String[] cells = line.split("\\s*\\|\\s*");
            if (cells.length == 4 && cells[1].contains(":")) {
                noticed.put(cells[1], cells[2]);
                if (!COMPATIBLE.contains(cells[3])) {
                    incompatible.add(line);
                }
            }
        }
        assertEquals(List.of(), List.copyOf(new TreeSet<>(incompatible)));
        return noticed;
    }

    @Test
    void listsEachJarInsideABundle() throws IOException {
        Set<String> named = new TreeSet<>();
        noticed(true)
                .forEach((name, version) -> named.add(name.substring(name.indexOf(':') + 1) + "-" + version + ".jar"));
        Set<String> embedded = new TreeSet<>();
        for (String bundle : Project.bundles()) {
            embedded.addAll(Project.embedded(bundle));
        }
        assertTrue(embedded.size() >= 15, "jars: " + embedded);
        assertEquals(embedded, named);
    }

    @Test
    void listsEachLibraryOfTheProductInItsVersion() throws IOException {
        Map<String, String> noticed = noticed(false);
        Map<String, String> shipped = new TreeMap<>();
        for (Library library :
                Library.below(Project.xml(Project.ROOT.resolve("releng/target/twinfeed.target")), Map.of())) {
            if (!onlyTests(library.name())) {
                shipped.put(library.name(), library.version());
            }
        }
        assertTrue(shipped.size() > 60, "libraries: " + shipped.size());
        assertEquals(shipped, noticed);
    }

    private static boolean onlyTests(String name) {
        return name.equals("org.eclipse.platform:org.eclipse.equinox.launcher") // starts Tycho's test runtime
                || name.startsWith("org.junit.")
                || name.startsWith("org.opentest4j:")
                || name.startsWith("org.apiguardian:");
    }
}
