// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The files of this project. */
final class Project {
    static final Path ROOT = Path.of(System.getProperty("twinfeed.root", "")).toAbsolutePath();

    private Project() {}

    /** The folders of all bundles but those that only test, in the order of their names. */
    static List<String> bundles() {
        try (Stream<Path> found = Files.list(ROOT.resolve("bundles"))) {
            return found.filter(folder -> Files.exists(folder.resolve("pom.xml")))
                    .map(folder -> folder.getFileName().toString())
                    .filter(name -> !name.endsWith("tests"))
                    .sorted()
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Path bundle(String name) {
        return ROOT.resolve("bundles").resolve(name);
    }

    /**
     * Files of an ending below a folder, in the order of their names; none where it is not there. What is built is left out: other modules are at
     * work there.
     */
    static List<Path> files(Path folder, String ending) {
        List<Path> files = new ArrayList<>();
        try {
            if (Files.isDirectory(folder)) {
                Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult preVisitDirectory(Path inner, BasicFileAttributes attributes) {
                        return inner.endsWith("target") || inner.endsWith("node_modules")
                                ? FileVisitResult.SKIP_SUBTREE
                                : FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                        if (file.toString().endsWith(ending)) {
                            files.add(file);
                        }
                        return FileVisitResult.CONTINUE;
                    }
                });
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        Collections.sort(files);
        return files;
    }

    /** Names of the jars that lie inside a bundle. */
    static Set<String> embedded(String bundle) {
        try (Stream<Path> found = Files.list(bundle(bundle).resolve("target/classes"))) {
            return found.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".jar"))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Element xml(Path file) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(file.toFile())
                    .getDocumentElement();
        } catch (IOException | SAXException | ParserConfigurationException broken) {
            throw new IllegalStateException(file.toString(), broken);
        }
    }

    /** All elements of a name below another. */
    static List<Element> all(Element above, String name) {
        NodeList found = above.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    /** The text of the first element of a name right below another; empty if there is none. */
    static String text(Element above, String name) {
        return all(above, name).stream()
                .filter(element -> element.getParentNode() == above)
                .findFirst()
                .map(element -> element.getTextContent().strip())
                .orElse("");
    }
}
