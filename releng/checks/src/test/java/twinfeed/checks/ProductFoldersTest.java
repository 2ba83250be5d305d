// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is in the product folders, one for each system. */
class ProductFoldersTest {
    @ParameterizedTest
    @CsvSource({
        "linux/gtk/x86_64, twinfeed, org.eclipse.swt.gtk.linux.x86_64_",
        "macosx/cocoa/aarch64, twinfeed, org.eclipse.swt.cocoa.macosx.aarch64_",
        "win32/win32/x86_64, twinfeed.cmd, org.eclipse.swt.win32.win32.x86_64_",
    })
    void hasItsStartScriptAndItsOwnWidgetsAlone(String system, String script, String widgets) throws IOException {
        Path folder = Product.assembled(system);
        assertTrue(Files.isRegularFile(folder.resolve(script)));
        assertTrue(script.endsWith(".cmd") || Files.isExecutable(folder.resolve(script)));
        List<String> fragments = jars(folder)
                .filter(name -> name.matches("org\\.eclipse\\.swt\\.(gtk|cocoa|win32)\\..*"))
                .toList();
        assertEquals(1, fragments.size(), fragments.toString());
        assertTrue(fragments.get(0).startsWith(widgets), fragments.toString());
        for (String name : List.of(
                "twinfeed.jar",
                "LICENSE",
                "NOTICES.md",
                "components.cdx.json",
                "licences/org.apache.commons.lang3/LICENSE.txt",
                "demo/prices.csv",
                "completions/twinfeed.bash",
                "completions/_twinfeed",
                "man/man1/twinfeed.1",
                "schemas/quote-1.json",
                "configuration/build")) {
            assertTrue(Files.isRegularFile(folder.resolve(name)), name);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"linux/gtk/x86_64", "macosx/cocoa/aarch64", "win32/win32/x86_64"})
    void hasNoSignaturesNoOldWorkbenchAndNoTests(String system) throws IOException {
        Path folder = Product.assembled(system);
        Set<String> unwanted = new TreeSet<>();
        for (String name : jars(folder).toList()) {
            if (name.startsWith("org.eclipse.ui") || name.contains("junit") || name.contains("tests")) {
                unwanted.add(name);
            }
            if (signed(folder.resolve("plugins").resolve(name))) {
                unwanted.add(name + " is signed");
            }
        }
        assertEquals(Set.of(), unwanted);
    }

    /** A bundle is a jar, or a folder if it holds jars itself. */
    private static boolean signed(Path bundle) throws IOException {
        if (Files.isDirectory(bundle)) {
            try (Stream<Path> files = Files.walk(bundle)) {
                return files.anyMatch(
                        file -> signature(bundle.relativize(file).toString().replace('\\', '/')));
            }
        }
        try (JarFile jar = new JarFile(bundle.toFile())) {
            return jar.stream().anyMatch(entry -> signature(entry.getName()));
        }
    }

    private static boolean signature(String name) {
        return name.matches("META-INF/[^/]+\\.(SF|RSA|DSA|EC)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"linux/gtk/x86_64", "macosx/cocoa/aarch64", "win32/win32/x86_64"})
    void doesNotTellWhereItWasBuilt(String system) throws IOException {
        Path folder = Product.assembled(system);
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> texts = files.filter(Files::isRegularFile)
                    .filter(file -> !file.startsWith(folder.resolve("state")))
                    .filter(file -> !file.toString().endsWith(".jar"))
                    .toList();
            assertTrue(texts.size() > 8, texts.toString());
            for (Path text : texts) {
                assertFalse(
                        Files.readString(text, StandardCharsets.ISO_8859_1).contains(Project.ROOT.toString()),
                        () -> text + " names " + Project.ROOT);
            }
        }
    }

    /** Every bundle of ours is in the product, and the command line starts without those of the window. */
    @Test
    void hasEveryBundleOfOurs() throws IOException {
        Path folder = Product.assembled("linux/gtk/x86_64");
        Set<String> shipped = jars(folder)
                .filter(name -> name.startsWith("twinfeed."))
                .map(name -> name.substring(0, name.indexOf('_')))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(Project.bundles()), shipped);
        String headless = Files.readString(folder.resolve("configuration/headless.ini"));
        assertTrue(headless.contains("twinfeed.cli_"));
        assertFalse(headless.contains("org.eclipse.swt") || headless.contains("org.eclipse.e4"), headless);
    }

    private static Stream<String> jars(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("plugins"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList().stream();
        }
    }
}
