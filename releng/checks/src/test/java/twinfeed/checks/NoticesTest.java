// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.cyclonedx.Version;
import org.cyclonedx.exception.ParseException;
import org.cyclonedx.model.Bom;
import org.cyclonedx.parsers.JsonParser;
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
            "BSD-3-Clause AND Apache-2.0",
            "EPL-2.0 AND IJG AND MIT",
            "EPL-2.0 AND BSD-3-Clause AND IJG AND MIT",
            "EPL-2.0 AND LGPL-2.1-only AND BSD-2-Clause AND MPL-1.1 AND IJG AND MIT");

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

    /** What the widgets' own jars say of themselves stands in the notices too. */
    @Test
    void namesTheLicencesOfThePortionsOfTheWidgets() throws IOException {
        Map<String, String> words = Map.of(
                "Lesser General Public License", "LGPL-2.1",
                "Independent JPEG Group", "IJG",
                "PuTTY", "MIT",
                "BSD license", "BSD-",
                "Mozilla Public License", "MPL-1.1");
        String notices = Files.readString(Project.ROOT.resolve("releng/NOTICES.md"));
        List<String> missing = new ArrayList<>();
        int abouts = 0;
        for (String system : List.of("linux/gtk/x86_64", "win32/win32/x86_64", "macosx/cocoa/aarch64")) {
            Path folder = Product.assembled(system).resolve("licences");
            try (Stream<Path> found = Files.list(folder)) {
                for (Path widgets : found.filter(
                                each -> each.getFileName().toString().startsWith("org.eclipse.swt."))
                        .toList()) {
                    String about = Files.readString(widgets.resolve("about.html"), StandardCharsets.ISO_8859_1)
                            .replaceAll("\\s+", " ");
                    String name = widgets.getFileName().toString();
                    String row = notices.lines()
                            .filter(line -> line.startsWith("| org.eclipse.platform:" + name + " |"))
                            .findFirst()
                            .orElse("");
                    abouts++;
                    words.forEach((word, licence) -> {
                        if (about.contains(word) && !row.contains(licence)) {
                            missing.add(name + ": " + licence);
                        }
                    });
                }
            }
        }
        assertTrue(abouts >= 3, "about.html seen: " + abouts);
        assertEquals(List.of(), missing);
    }

    /** The product's own list for programs, held against the schema of CycloneDX by the library of that project. */
    @Test
    void theListOfComponentsIsValidAndWhole() throws IOException, ParseException {
        Path list = Product.assembled("linux/gtk/x86_64").resolve("components.cdx.json");
        JsonParser parser = new JsonParser();
        assertEquals(List.of(), parser.validate(list.toFile(), Version.VERSION_15));
        Bom bom = parser.parse(list.toFile());
        Set<String> listed = new TreeSet<>();
        bom.getComponents()
                .forEach(each -> listed.add(each.getGroup() + ":" + each.getName() + ":" + each.getVersion()));
        Set<String> expected = new TreeSet<>();
        for (boolean embedded : List.of(true, false)) {
            noticed(embedded).forEach((name, version) -> expected.add(name + ":" + version));
        }
        expected.removeIf(name -> name.contains("swt.win32") || name.contains("swt.cocoa"));
        assertEquals(expected, listed);
    }

    private static boolean onlyTests(String name) {
        return name.equals("org.eclipse.platform:org.eclipse.equinox.launcher") // starts Tycho's test runtime
                || name.startsWith("org.junit.")
                || name.startsWith("org.opentest4j:")
                || name.startsWith("org.apiguardian:");
    }
}
