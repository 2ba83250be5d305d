// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/** Whole folders. */
final class Folders {
    private Folders() {}

    /** The files right in a folder, in the order of their names. */
    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** The name of the one file whose name begins so. */
    static String only(Path folder, String beginning) throws IOException {
        List<String> names = files(folder).stream()
                .map(file -> file.getFileName().toString())
                .filter(name -> name.startsWith(beginning))
                .toList();
        if (names.size() != 1) {
            throw new IOException("expected one " + beginning + "* in " + folder + ", found " + names);
        }
        return names.get(0);
    }

    /** Copies what is below a folder, with the right to run. */
    static void copy(Path from, Path to) throws IOException {
        for (Path source : walk(from)) {
            Path target = to.resolve(from.relativize(source).toString());
            Files.createDirectories(Files.isDirectory(source) ? target : target.resolveSibling(""));
            if (Files.isRegularFile(source)) {
                Files.copy(source, target, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    /** Deletes a folder and what is in it, if it is there. */
    static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            for (Path path :
                    walk(folder).stream().sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    /** A short name for the content: another file, name or byte gives another. */
    static String fingerprint(Path folder) throws IOException {
        CRC32 sum = new CRC32();
        for (Path file : walk(folder)) {
            if (Files.isRegularFile(file)) {
                sum.update(folder.relativize(file).toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
                sum.update(Files.readAllBytes(file));
            }
        }
        return String.format(java.util.Locale.ROOT, "%08x", sum.getValue());
    }

    private static List<Path> walk(Path folder) throws IOException {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.sorted().toList();
        }
    }
}
