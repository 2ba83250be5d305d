// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The same libraries in the same versions wherever they are named: poms, target definition, class path of the tests. */
class PinnedVersionsTest {
    private static final Pattern FIXED = Pattern.compile("[0-9][0-9A-Za-z.+_-]*");
    private static final Element TARGET = Project.xml(Project.ROOT.resolve("releng/target/twinfeed.target"));
    private static final Element ROOT_POM = Project.xml(Project.ROOT.resolve("pom.xml"));

    @Test
    void everyLocationOfTheTargetListsItsJarsOneByOne() {
        List<Element> locations = Project.all(TARGET, "location");
        assertTrue(locations.size() >= 3, "locations: " + locations.size());
        assertAll(locations.stream().map(location -> () -> {
            String label = location.getAttribute("label");
            assertEquals("Maven", location.getAttribute("type"), label);
            assertEquals("none", location.getAttribute("includeDependencyDepth"), label);
        }));
    }

    @Test
    void noVersionFloats() {
        List<Library> libraries = new ArrayList<>(Library.below(TARGET, Map.of()));
        assertTrue(libraries.size() > 80, "libraries of the target: " + libraries.size());
        libraries.addAll(managed());
        assertEquals(List.of(), where(libraries, library -> !fixed(library.version())));
        assertEquals(List.of(), duplicates(Library.below(TARGET, Map.of())));
    }

    @Test
    void everyPluginOfTheBuildHasAFixedVersion() {
        List<String> floating = new ArrayList<>();
        Map<String, String> versions = new HashMap<>();
        for (Element plugin : Project.all(ROOT_POM, "plugin")) {
            String version = resolved(Project.text(plugin, "version"));
            versions.put(Project.text(plugin, "artifactId"), version);
            if (!fixed(version)) {
                floating.add(Project.text(plugin, "artifactId"));
            }
        }
        for (String pom : poms()) {
            for (Element plugin : Project.all(Project.xml(Project.ROOT.resolve(pom)), "plugin")) {
                String name = Project.text(plugin, "artifactId");
                if (!versions.containsKey(name)) {
                    floating.add(name + " in " + pom);
                }
            }
        }
        assertEquals(List.of(), floating);
    }

    @Test
    void whatABundleNeedsIsInTheTargetInTheSameVersion() {
        Map<String, String> managed = byName(managed());
        Map<String, String> target = byName(Library.below(TARGET, Map.of()));
        List<String> wrong = new ArrayList<>();
        int seen = 0;
        for (String bundle : Project.bundles()) {
            for (Library needed :
                    Library.below(Project.xml(Project.bundle(bundle).resolve("pom.xml")), Map.of())) {
                if (needed.ours()
                        || needed.scope().equals("test")
                        || needed.name().contains("jspecify")) {
                    continue; // jspecify: annotations that no class asks for at run time
                }
                seen++;
                String version = managed.get(needed.name());
                String jar = needed.name().substring(needed.name().indexOf(':') + 1) + "-" + version + ".jar";
                if (Project.embedded(bundle).contains(jar)) {
                    continue; // lies inside the bundle
                }
                if (version == null || !version.equals(target.get(needed.name()))) {
                    wrong.add(bundle + " needs " + needed.name() + " " + version + ", the target has "
                            + target.get(needed.name()));
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(seen >= 10, "needs seen: " + seen);
    }

    /** Tests on the plain class path see what the product runs. */
    @Test
    void theClassPathOfTheTestsHasTheVersionsOfTheTarget() {
        Map<String, String> target = byName(Library.below(TARGET, Map.of()));
        Map<String, String> classPath = classPath();
        Map<String, String> wrong = new TreeMap<>();
        int seen = 0;
        for (Map.Entry<String, String> library : classPath.entrySet()) {
            String version = target.get(library.getKey());
            if (version != null) {
                seen++;
                if (!version.equals(library.getValue())) {
                    wrong.put(library.getKey(), library.getValue() + ", the target has " + version);
                }
            }
        }
        assertEquals(Map.of(), wrong);
        assertTrue(seen >= 20, "libraries of both: " + seen);
        assertFalse(classPath.keySet().stream().anyMatch(name -> name.startsWith("org.eclipse.ui:")));
    }

    /** Group, artifact and version of each jar, from its place in the local repository. */
    private static Map<String, String> classPath() {
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Map<String, String> found = new HashMap<>();
        for (String entry : path.split(File.pathSeparator)) {
            Path jar = Path.of(entry);
            if (!entry.endsWith(".jar") || jar.getNameCount() < 5) {
                continue;
            }
            Path version = jar.getParent();
            Path artifact = version.getParent();
            // The repository's own folder is not known here: what is tried is every ending of the folders above.
            for (int from = artifact.getNameCount() - 2; from >= 0; from--) {
                String group = artifact.subpath(from, artifact.getNameCount() - 1)
                        .toString()
                        .replace(File.separator, ".");
                found.put(
                        group + ":" + artifact.getFileName(),
                        version.getFileName().toString());
            }
        }
        return found;
    }

    /** A version with what stands for a property. */
    private static String resolved(String version) {
        String name = version.replaceAll("^\\$\\{(.*)}$", "$1");
        return properties().getOrDefault(name, version);
    }

    private static List<Library> managed() {
        return Library.below(Project.all(ROOT_POM, "dependencyManagement").get(0), properties());
    }

    private static Map<String, String> properties() {
        Map<String, String> properties = new HashMap<>();
        Element element = Project.all(ROOT_POM, "properties").get(0);
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element) {
                properties.put(child.getNodeName(), child.getTextContent().strip());
            }
        }
        return properties;
    }

    private static List<String> poms() {
        return Project.all(ROOT_POM, "module").stream()
                .map(module -> module.getTextContent().strip() + "/pom.xml")
                .toList();
    }

    private static boolean fixed(String version) {
        return FIXED.matcher(version).matches() && !version.endsWith("SNAPSHOT");
    }

    private static Map<String, String> byName(List<Library> libraries) {
        return libraries.stream().collect(Collectors.toMap(Library::name, Library::version, (first, second) -> first));
    }

    private static List<Library> where(List<Library> libraries, Predicate<Library> condition) {
        return libraries.stream().filter(condition).toList();
    }

    private static List<String> duplicates(List<Library> libraries) {
        return libraries.stream()
                .collect(Collectors.groupingBy(Library::name, Collectors.counting()))
                .entrySet()
                .stream()
                .filter(entry -> entry.getValue() > 1)
                .map(Map.Entry::getKey)
                .toList();
    }
}
