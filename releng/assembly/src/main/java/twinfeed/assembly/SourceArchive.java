// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** The source of the program as a zip file: who gets the program gets its source (EPL-2.0, section 3.1). */
final class SourceArchive {
    private static final List<String> TOP = List.of(
            "pom.xml",
            "README.md",
            "DEVELOPERS.md",
            "CHANGELOG.md",
            "LICENSE",
            ".mvn",
            "bundles",
            "features",
            "releng",
            "demo");
    private static final Set<String> LEFT_OUT = Set.of("target", "bin", "node_modules", ".git", ".settings", ".idea");
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private SourceArchive() {}

    /**
     * Writes the archive. The same sources give the same bytes.
     *
     * @param root of the project
     * @param file to write
     * @param name of the folder in the archive
     * @throws IOException if a file cannot be read or written
     */
    static void write(Path root, Path file, String name) throws IOException {
        Set<Path> sources = new TreeSet<>();
        for (String top : TOP) {
            if (Files.exists(root.resolve(top))) {
                collect(root, root.resolve(top), sources);
            }
        }
        Files.createDirectories(file.resolveSibling(""));
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Path source : sources) {
                ZipEntry entry = new ZipEntry(
                        name + "/" + root.relativize(source).toString().replace('\\', '/'));
                entry.setTimeLocal(NO_TIME);
                zip.putNextEntry(entry);
                Files.copy(source, zip);
                zip.closeEntry();
            }
        }
    }

    private static void collect(Path root, Path top, Set<Path> sources) throws IOException {
        Path definition = root.resolve("releng/target");
        Files.walkFileTree(top, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                return LEFT_OUT.contains(folder.getFileName().toString()) && !folder.equals(definition)
                        ? FileVisitResult.SKIP_SUBTREE
                        : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                String name = file.getFileName().toString();
                if (attributes.isRegularFile() && !name.startsWith(".flattened") && !name.startsWith(".tycho")) {
                    sources.add(file);
                }
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
