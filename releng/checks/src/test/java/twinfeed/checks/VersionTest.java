// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The version of the project stands in the root pom, as {@code revision}; everything else reads it or agrees with it. */
class VersionTest {
    private static final Element ROOT_POM = Project.xml(Project.ROOT.resolve("pom.xml"));
    private static final String VERSION =
            Project.all(ROOT_POM, "revision").get(0).getTextContent().strip();
    private static final String DERIVED = "${revision}${changelist}";

    @Test
    void everyPomTakesItFromTheRoot() {
        assertTrue(VERSION.matches("\\d+\\.\\d+\\.\\d+"), VERSION);
        assertEquals(DERIVED, Project.text(ROOT_POM, "version"));
        Map<String, String> others = new TreeMap<>();
        List<Element> modules = Project.all(ROOT_POM, "module");
        assertTrue(modules.size() > 25, "modules: " + modules.size());
        for (Element module : modules) {
            String pom = module.getTextContent().strip() + "/pom.xml";
            Element project = Project.xml(Project.ROOT.resolve(pom));
            String version = Project.text(Project.all(project, "parent").get(0), "version");
            if (!version.equals(DERIVED) || !Project.text(project, "version").isEmpty()) {
                others.put(pom, version);
            }
        }
        assertEquals(Map.of(), others);
    }

    /** What PDE wants literally: {@code releng/set-version} writes it there. */
    @Test
    void manifestsFeaturesAndTheProductAgreeWithIt() throws IOException {
        Map<String, String> found = new TreeMap<>();
        for (Path file : files("bundles", "META-INF/MANIFEST.MF")) {
            found.put(name(file), first(Files.readString(file), "(?m)^Bundle-Version: (.*)$"));
        }
        for (Path file : files("features", "feature.xml")) {
            found.put(name(file), Project.xml(file).getAttribute("version"));
        }
        Path product = Project.ROOT.resolve("releng/product/twinfeed.product");
        found.put(name(product), Project.xml(product).getAttribute("version"));
        assertTrue(found.size() >= 6, found.toString());
        found.values().removeIf((VERSION + ".qualifier")::equals);
        assertEquals(Map.of(), found, "run releng/set-version");
    }

    @Test
    void noBundleExportsAVersionOfItsOwn() throws IOException {
        Map<String, String> literal = new TreeMap<>();
        for (String folder : List.of("bundles", "releng")) {
            for (Path file : files(folder, "bnd.bnd")) {
                Matcher version = Pattern.compile("version=[\"']?\\d\\S*").matcher(Files.readString(file));
                if (version.find()) {
                    literal.put(name(file), version.group());
                }
            }
        }
        assertEquals(Map.of(), literal);
    }

    @Test
    void theProgramNamesIt() throws IOException {
        assertEquals(
                VERSION,
                first(
                        Files.readString(Project.bundle("twinfeed.usecase")
                                .resolve("target/classes/twinfeed/usecase/version.properties")),
                        "(?m)^version=(.*)$"));
    }

    private static String first(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        return found.find() ? found.group(1).strip() : "";
    }

    private static String name(Path file) {
        return Project.ROOT.relativize(file).toString();
    }

    private static List<Path> files(String folder, String file) throws IOException {
        try (Stream<Path> found = Files.list(Project.ROOT.resolve(folder))) {
            return found.map(each -> each.resolve(file))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        }
    }
}
