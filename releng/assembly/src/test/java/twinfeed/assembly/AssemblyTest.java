// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Finishes small product folders of the form that the build materialises. */
class AssemblyTest {
    private static final String BUNDLES = "reference:file:a.b_1.0.0.v2026_01.jar@4,"
            + "reference:file:c_2.0.0.jar@2:start,reference:file:window_1.0.0.jar@4:start";

    private static final String NOTICES =
            "# Notices\n\n| library | version | licence |\n|---|---|---|\n| some.group:some-name | 1.2 | MIT |\n"
                    + "| org.eclipse.platform:org.eclipse.swt.win32.x | 3 | EPL-2.0 |\n";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path root;

    private Path linux = Path.of("");
    private Path mac = Path.of("");

    @BeforeEach
    void materialise() throws IOException {
        linux = root.resolve("products/linux/gtk/x86_64");
        mac = root.resolve("products/macosx/cocoa/aarch64");
        product(linux);
        product(mac.resolve("Eclipse.app/Contents/Eclipse"));
        write("features/f/feature.xml", "<feature id='f'><plugin id='a.b'/><plugin id='org.eclipse.osgi'/></feature>");
        write("features/g/feature.xml", "<feature id='g'><plugin id='c'/></feature>");
        write("releng/product/headless.ini", "eclipse.application=verbs\n");
        write("releng/product/files/all/configuration/training.txt", "plugins\n");
        write("releng/product/files/unix/start", "#!/bin/sh\n");
        write("releng/product/files/windows/start.cmd", "rem\n");
        write("demo/a.job", "<job/>");
        write("bundles/twinfeed.cli/src/main/resources/twinfeed/cli/schema/a-1.json", "{}");
        write("releng/NOTICES.md", NOTICES);
        write("releng/licences/org.eclipse.osgi.txt", "terms");
        write("releng/target/own.target", "<target/>");
        write("releng/launcher/target/classes/A.class", "built");
        write("pom.xml", "<project/>");
        write("LICENSE", "licence");
        jar(root.resolve("launcher.jar"));
        assertTrue(root.resolve("releng/product/files/unix/start").toFile().setExecutable(true));
    }

    private static void product(Path folder) throws IOException {
        Files.createDirectories(folder.resolve("configuration"));
        Files.createDirectories(folder.resolve("plugins"));
        Files.createDirectories(folder.resolve("p2/org"));
        Files.writeString(folder.resolve("artifacts.xml"), "<x/>");
        Files.writeString(
                folder.resolve("configuration/config.ini"),
                "#Wed Nov 25 07:52:21 UTC 2026\nosgi.bundles=" + BUNDLES.replace(":", "\\:")
                        + "\neclipse.p2.profile=x\nosgi.framework=file\\:x\neclipse.application=window\n");
        jar(folder.resolve("plugins/org.eclipse.osgi_3.0.0.jar"));
    }

    private static void jar(Path file) throws IOException {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            out.putNextEntry(new ZipEntry(JarFile.MANIFEST_NAME));
            out.write("Manifest-Version: 1.0\r\n\r\n".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }
    }

    private void write(String name, String text) throws IOException {
        Path file = root.resolve(name);
        Files.createDirectories(file.resolveSibling(""));
        Files.writeString(file, text);
    }

    private void assemble(String... features) throws IOException {
        List<String> arguments = new java.util.ArrayList<>(List.of(
                root.resolve("products").toString(),
                root.toString(),
                root.resolve("launcher.jar").toString(),
                "1.2.3"));
        arguments.addAll(List.of(features));
        Assembly.main(arguments.toArray(String[]::new));
    }

    @Test
    void listsForTheCommandLineTheBundlesOfItsFeatures() throws IOException {
        assemble("f", "g");
        Configuration headless = Configuration.read(linux.resolve("configuration/headless.ini"));
        assertEquals(
                "reference:file:a.b_1.0.0.v2026_01.jar@4,reference:file:c_2.0.0.jar@2:start",
                headless.settings().get("osgi.bundles"));
        assertEquals("verbs", headless.settings().get("eclipse.application"));
    }

    @Test
    void keepsTheListOfTheWindowWithoutWhatAnInstallerReads() throws IOException {
        assemble("f", "g");
        Configuration desktop = Configuration.read(linux.resolve("configuration/config.ini"));
        assertEquals(BUNDLES, desktop.settings().get("osgi.bundles"));
        assertEquals(2, desktop.settings().size());
        assertFalse(Files.exists(linux.resolve("p2")));
        assertFalse(Files.exists(linux.resolve("artifacts.xml")));
    }

    @Test
    void refusesAFeatureWhoseBundleTheProductLacks() throws IOException {
        write("features/h/feature.xml", "<feature id='h'><plugin id='missing'/></feature>");
        IOException refused = assertThrows(IOException.class, () -> assemble("f", "h"));
        assertTrue(String.valueOf(refused.getMessage()).contains("missing"), refused.getMessage());
    }

    @Test
    void addsLauncherScriptsDemoAndNotices() throws IOException {
        assemble("f");
        for (Path product : List.of(linux, mac)) {
            assertTrue(Files.isExecutable(product.resolve("start")), product.toString());
            assertFalse(Files.exists(product.resolve("start.cmd")));
            assertEquals("plugins\n", Files.readString(product.resolve("configuration/training.txt")));
            assertEquals("<job/>", Files.readString(product.resolve("demo/a.job")));
            assertEquals("{}", Files.readString(product.resolve("schemas/a-1.json")));
            assertEquals("licence", Files.readString(product.resolve("LICENSE")));
            assertEquals(NOTICES, Files.readString(product.resolve("NOTICES.md")));
            try (JarFile launcher = new JarFile(product.resolve("twinfeed.jar").toFile())) {
                assertEquals(
                        "plugins/org.eclipse.osgi_3.0.0.jar",
                        launcher.getManifest().getMainAttributes().getValue("Class-Path"));
            }
        }
        assertFalse(Files.exists(mac.resolve("Eclipse.app")));
    }

    @Test
    void refusesABundleWithoutALicenceText() throws IOException {
        Files.delete(root.resolve("releng/licences/org.eclipse.osgi.txt"));
        IOException refused = assertThrows(IOException.class, () -> assemble("f"));
        assertTrue(String.valueOf(refused.getMessage()).contains("org.eclipse.osgi"), refused.getMessage());
    }

    @Test
    void addsTheLicenceTextsOfTheJarsAndOurOwnForThoseThatCarryNone() throws IOException {
        Path jar = linux.resolve("plugins/d_1.0.0.jar");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
            for (String name :
                    List.of("META-INF/LICENSE.txt", "about.html", "about_files/mpl.txt", "a/License.class")) {
                out.putNextEntry(new ZipEntry(name));
                out.write(name.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            }
        }
        assemble("f");
        Path licences = linux.resolve("licences");
        assertEquals("terms", Files.readString(licences.resolve("org.eclipse.osgi/LICENSE.txt")));
        assertEquals("META-INF/LICENSE.txt", Files.readString(licences.resolve("d/LICENSE.txt")));
        assertTrue(Files.exists(licences.resolve("d/about.html"))
                && Files.exists(licences.resolve("d/about_files/mpl.txt")));
        assertFalse(Files.exists(licences.resolve("d/a")));
    }

    @Test
    void listsTheComponentsOfItsSystem() throws IOException {
        assemble("f");
        String list = Files.readString(linux.resolve("components.cdx.json"));
        assertTrue(list.contains("\"purl\": \"pkg:maven/some.group/some-name@1.2\""), list);
        assertTrue(list.contains("\"version\": \"1.2.3\""), list);
        assertFalse(list.contains("win32"), list);
    }

    @Test
    void addsTheSourceWithoutWhatWasBuilt() throws IOException {
        assemble("f");
        List<String> names;
        try (java.util.zip.ZipFile zip = new java.util.zip.ZipFile(
                linux.resolve("source/twinfeed-1.2.3-source.zip").toFile())) {
            names = zip.stream().map(ZipEntry::getName).toList();
        }
        assertTrue(names.contains("twinfeed-1.2.3-source/pom.xml"), names.toString());
        assertTrue(names.contains("twinfeed-1.2.3-source/releng/target/own.target"), names.toString());
        assertFalse(names.stream().anyMatch(name -> name.endsWith(".class")), names.toString());
    }

    @Test
    void namesTheBuildByItsContent() throws IOException {
        assemble("f");
        String first = Files.readString(linux.resolve("configuration/build"));
        assertTrue(first.matches("[0-9a-f]{8}\n"), first);
        Files.writeString(linux.resolve("demo/a.job"), "<job />");
        Files.delete(linux.resolve("configuration/build"));
        assertNotEquals(first.strip(), Folders.fingerprint(linux));
    }
}
