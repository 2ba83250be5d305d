// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JarsTest {
    private static final String MANIFEST = "Manifest-Version: 1.0\r\nBundle-SymbolicName: a\r\n\r\n"
            + "Name: a/A.class\r\nSHA-256-Digest: abc=\r\n\r\n"
            + "Name: a/\r\nSpecification-Title: kept\r\nSHA-256-Digest: abc=\r\n\r\n";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    private Path jar = Path.of("");

    @BeforeEach
    void nameTheJar() {
        jar = folder.resolve("a.jar");
    }

    private void write(String... names) throws IOException {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
            for (String name : names) {
                ZipEntry entry = new ZipEntry(name);
                entry.setTime(0);
                out.putNextEntry(entry);
                String content = name.equals(JarFile.MANIFEST_NAME) ? MANIFEST : "content of " + name;
                out.write(content.getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private List<String> names() throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            return file.stream().map(ZipEntry::getName).toList();
        }
    }

    @Test
    void takesSignaturesAndDigestsOff() throws IOException {
        write(
                JarFile.MANIFEST_NAME,
                "META-INF/ECLIPSE_.SF",
                "META-INF/ECLIPSE_.RSA",
                "META-INF/eclipse.inf",
                "META-INF/services/a.SF",
                "a/A.class");
        Jars.unsign(jar);
        assertEquals(
                List.of(JarFile.MANIFEST_NAME, "META-INF/eclipse.inf", "META-INF/services/a.SF", "a/A.class"), names());
        try (JarFile file = new JarFile(jar.toFile())) {
            assertEquals("a", file.getManifest().getMainAttributes().getValue("Bundle-SymbolicName"));
            assertEquals(
                    List.of("a/"), List.copyOf(file.getManifest().getEntries().keySet()));
            assertEquals(
                    "content of a/A.class",
                    new String(file.getInputStream(file.getEntry("a/A.class")).readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void leavesAnUnsignedJarAsItIs() throws IOException {
        write(JarFile.MANIFEST_NAME, "a/A.class");
        byte[] before = Files.readAllBytes(jar);
        Jars.unsign(jar);
        assertArrayEquals(before, Files.readAllBytes(jar));
        assertEquals(1, Folders.files(folder).size());
    }

    @Test
    void namesAnotherJarOnTheClassPath() throws IOException {
        write(JarFile.MANIFEST_NAME, "a/A.class");
        Path copy = folder.resolve("b.jar");
        Jars.withClassPath(jar, copy, "plugins/x.jar");
        try (JarFile file = new JarFile(copy.toFile())) {
            assertEquals("plugins/x.jar", file.getManifest().getMainAttributes().getValue("Class-Path"));
            assertEquals("a", file.getManifest().getMainAttributes().getValue("Bundle-SymbolicName"));
        }
    }
}
