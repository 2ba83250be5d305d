// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The start script of the product, with a stand-in for the Java machine that says how it was called. */
@DisabledOnOs(OS.WINDOWS)
class StartScriptTest {
    @TempDir
    private Path product;

    private Path script;

    @BeforeEach
    void install() throws IOException {
        script = Files.copy(Project.ROOT.resolve("releng/product/files/unix/twinfeed"), product.resolve("twinfeed"));
        write("configuration/build", "1\n");
        Path java = write(
                "jre/bin/java",
                """
                #!/bin/sh
                case "$*" in *WarmUp*) exit 0 ;; esac
                echo "locale $LC_ALL"
                case "$*" in *wait*) exec sleep 60 ;; esac
                exit 64
                """);
        assertTrue(java.toFile().setExecutable(true) && script.toFile().setExecutable(true));
    }

    private Path write(String name, String text) throws IOException {
        Path file = product.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private ProcessBuilder command(String... words) {
        ProcessBuilder builder = new ProcessBuilder(words);
        builder.environment().keySet().removeIf(name -> name.startsWith("LC_") || name.equals("LANG"));
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        return builder.redirectErrorStream(true);
    }

    private static String said(Process process) throws IOException {
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @Test
    void filesWithAnyLetterCanBeNamedWithoutALocale() throws Exception {
        Process process = command(script.toString(), "assess").start();
        assertTrue(said(process).contains("locale C.UTF-8"));
        assertEquals(0, process.waitFor());
        ProcessBuilder set = command(script.toString(), "assess");
        set.environment().put("LC_ALL", "de_DE.UTF-8");
        assertTrue(said(set.start()).contains("locale de_DE.UTF-8"), "a locale that is set stays");
    }

    @Test
    void anInterruptIsToldInASentence() throws Exception {
        Process process = command(script.toString(), "wait").start();
        TimeUnit.SECONDS.sleep(2);
        assertEquals(
                0,
                new ProcessBuilder("kill", "-TERM", String.valueOf(process.pid()))
                        .start()
                        .waitFor());
        assertTrue(said(process).contains("stopped before it was done"));
        assertEquals(143, process.waitFor());
    }

    @Test
    void aWindowWithoutAScreenIsRefusedInASentence() throws Exception {
        Process process = command(script.toString()).start();
        String said = said(process);
        if (System.getProperty("os.name").equals("Linux")) {
            assertTrue(said.contains("there is no screen for the window"), said);
            assertEquals(3, process.waitFor());
        }
    }
}
