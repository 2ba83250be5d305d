// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A copy of the assembled product for Linux, started as a person starts it: by its script, as a process.
 *
 * @param folder where the copy is
 * @param environment added to that of the process; an empty value takes a variable away
 */
record Product(Path folder, Map<String, String> environment) {
    private static final long LIMIT_S = 180;
    private static final Path PRODUCTS = Project.ROOT.resolve("releng/product/target/products/twinfeed");

    /** What a run ended with. */
    record Run(int status, String out, String err) {}

    static Path assembled(String system) {
        Path folder = PRODUCTS.resolve(system);
        assertTrue(Files.isDirectory(folder), folder + " is not there: the product is built before these tests");
        return folder;
    }

    /** Copies it, without what earlier starts have kept beside it. */
    static Product copyTo(Path folder) throws IOException {
        Path from = assembled("linux/gtk/x86_64");
        copy(from, folder, file -> !file.startsWith(from.resolve("state")));
        return new Product(folder, Map.of());
    }

    /** Copies the files of a folder into another, with their times. */
    static void copy(Path from, Path to, Predicate<Path> which) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(which).toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.copy(file, target, StandardCopyOption.COPY_ATTRIBUTES, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    /** The same, but that it can keep nothing between starts: its first start does not make the archive of classes, which takes long. */
    Product keepingNothing() throws IOException {
        Files.createFile(folder.resolve("state")); // no folder can be made of that name
        return with("XDG_CACHE_HOME", "/dev/null");
    }

    Product with(String name, String value) {
        Map<String, String> changed = new HashMap<>(environment);
        changed.put(name, value);
        return new Product(folder, changed);
    }

    Path script() {
        return folder.resolve("twinfeed");
    }

    Path demo(String name) {
        return folder.resolve("demo").resolve(name);
    }

    /** The folder that this product and this Java machine keep between starts. */
    Path state() throws IOException {
        try (Stream<Path> found = Files.list(folder.resolve("state"))) {
            return found.findFirst().orElseThrow();
        }
    }

    /** Runs a verb to its end, in the folder of the product. */
    Run run(String... arguments) {
        return run(folder, script(), arguments);
    }

    Run run(Path in, Path script, String... arguments) {
        List<String> command = new ArrayList<>(List.of("/bin/sh", script.toString()));
        command.addAll(List.of(arguments));
        try {
            Path out = Files.createTempFile("twinfeed-out", ".txt");
            Path err = Files.createTempFile("twinfeed-err", ".txt");
            ProcessBuilder builder = new ProcessBuilder(command)
                    .directory(in.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile());
            apply(builder.environment());
            Process process = builder.start();
            process.getOutputStream().close();
            assertTrue(process.waitFor(LIMIT_S, TimeUnit.SECONDS), command + " does not end");
            Run run = new Run(process.exitValue(), text(out), text(err));
            Files.delete(out);
            Files.delete(err);
            return run;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** Puts what this product adds to the environment of a process. */
    void apply(Map<String, String> processEnvironment) {
        processEnvironment.remove("JAVA_TOOL_OPTIONS"); // the Java machine names it on standard error
        environment.forEach((name, value) -> {
            if (value.isEmpty()) {
                processEnvironment.remove(name);
            } else {
                processEnvironment.put(name, value);
            }
        });
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }
}
