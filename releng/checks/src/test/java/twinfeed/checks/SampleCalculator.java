// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import javax.tools.ToolProvider;

/**
 * The calculator of {@code demo/sample-calculator}, compiled against published jars and packed as its own project does it.
 *
 * @param jars folder of the jars that it is compiled against
 * @param classes where the classes go
 */
record SampleCalculator(Path jars, Path classes) {
    private static final Path SOURCES = Project.ROOT.resolve("demo/sample-calculator/src/main");

    void build(Path jar, String version) throws IOException {
        compile();
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest(version))) {
            pack(out, classes);
            pack(out, SOURCES.resolve("resources"));
        }
    }

    private void compile() throws IOException {
        String path = files(jars).stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
        List<String> command = Stream.concat(
                        Stream.of("-proc:none", "-d", classes.toString(), "-cp", path),
                        files(SOURCES.resolve("java")).stream().map(Path::toString))
                .toList();
        int status = ToolProvider.getSystemJavaCompiler().run(null, null, null, command.toArray(String[]::new));
        assertEquals(0, status, "the sample compiles against the published jars alone");
    }

    private static Manifest manifest(String version) {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue("Bundle-ManifestVersion", "2");
        main.putValue("Bundle-SymbolicName", "example.energy");
        main.putValue("Bundle-Version", version);
        main.putValue(
                "Import-Package",
                "twinfeed.calculator,twinfeed.calculator.formula,twinfeed.units,twinfeed.model.catalogue");
        return manifest;
    }

    private static void pack(JarOutputStream out, Path folder) throws IOException {
        for (Path file : files(folder)) {
            out.putNextEntry(new ZipEntry(folder.relativize(file).toString().replace(File.separatorChar, '/')));
            Files.copy(file, out);
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
