// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** {@code releng/twinfeed} builds only where a source is newer than the product, with stand-ins for Maven and for the product. */
@EnabledOnOs(OS.LINUX)
class BuiltWhenNeededTest {
    private static final Instant BUILT = Instant.parse("2026-01-02T03:04:05Z");

    @TempDir
    private Path clone;

    @BeforeEach
    void build() throws IOException {
        for (String source : new String[] {"pom.xml", "bundles/one/src/main/java/One.java", "demo/one.job"}) {
            write(source, "", BUILT.minusSeconds(60));
        }
        Files.createDirectories(clone.resolve("features"));
        script("releng/twinfeed", Files.readString(Project.ROOT.resolve("releng/twinfeed")));
        script("releng/maven", "#!/bin/sh\nexit 1\n");
        script("releng/product/target/products/twinfeed/linux/gtk/x86_64/twinfeed", "#!/bin/sh\necho product $*\n");
        write("releng/product/target/built", "", BUILT);
        try (var all = Files.walk(clone)) {
            for (Path folder : all.filter(Files::isDirectory).toList()) {
                Files.setLastModifiedTime(folder, FileTime.from(BUILT.minusSeconds(60)));
            }
        }
    }

    private Path write(String name, String text, Instant time) throws IOException {
        Path file = clone.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        return Files.setLastModifiedTime(file, FileTime.from(time));
    }

    private void script(String name, String text) throws IOException {
        assertTrue(write(name, text, BUILT.minusSeconds(60)).toFile().setExecutable(true));
    }

    private String said() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(clone.resolve("releng/twinfeed").toString(), "verb")
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said;
    }

    @Test
    void nothingIsBuiltForWhatTheBuildItselfWrites() throws Exception {
        write("bundles/one/.flattened-pom.xml", "", BUILT.plusSeconds(60));
        write("bundles/one/target/classes/One.class", "", BUILT.plusSeconds(60));
        assertEquals("product verb", said().strip());
    }

    @Test
    void aNewerSourceIsBuilt() throws Exception {
        write("bundles/one/src/main/java/One.java", "", BUILT.plusSeconds(60));
        String said = said();
        assertTrue(said.contains("building Twinfeed (bundles/one/src/main/java"), said);
    }
}
