// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The licence texts of everything that is shipped, as files of their own: {@code licences/BUNDLE/...} holds what a jar carries
 * ({@code META-INF/LICENSE*}, {@code NOTICE*}, {@code about.html} and what it refers to); for a jar that carries none the text is ours to add.
 */
final class Licences {
    private static final Pattern TEXT = Pattern.compile(
            "(.*/)?(licen[cs]e|notice|copying|about\\.html|about\\.txt|epl-|edl-)[^/]*|(.*/)?about_files/[^/]+");

    private final Path added;
    private final Path target;

    /**
     * Collects the texts of a product.
     *
     * @param added folder of the texts for jars that carry none, {@code BUNDLE.txt}
     * @param target folder for all texts
     */
    Licences(Path added, Path target) {
        this.added = added;
        this.target = target;
    }

    /**
     * Writes the texts of all bundles of a folder but our own.
     *
     * @throws IOException if a bundle has no text, neither its own nor an added one, or a file cannot be read or written
     */
    void collect(Path plugins) throws IOException {
        List<String> without = new ArrayList<>();
        try (Stream<Path> found = Files.list(plugins)) {
            for (Path bundle : found.sorted().toList()) {
                String name = bundle.getFileName().toString().replaceFirst("_\\d+\\.\\d.*$", "");
                if (Files.isDirectory(bundle)) {
                    without.addAll(embedded(bundle));
                } else if (!name.startsWith("twinfeed.") && !collect(name, bundle)) {
                    without.add(name);
                }
            }
        }
        if (!without.isEmpty()) {
            throw new IOException("no licence text in " + without + "; put one into " + added);
        }
    }

    private List<String> embedded(Path bundle) throws IOException {
        List<String> without = new ArrayList<>();
        for (Path jar : Folders.files(bundle)) {
            String name = jar.getFileName().toString();
            if (name.endsWith(".jar") && !collect(name.substring(0, name.length() - 4), jar)) {
                without.add(name);
            }
        }
        return without;
    }

    /** Whether there was a text. */
    private boolean collect(String name, Path jar) throws IOException {
        Path folder = target.resolve(name);
        TreeSet<String> written = new TreeSet<>();
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                String lower = entry.getName().toLowerCase(Locale.ROOT);
                if (!entry.isDirectory()
                        && !lower.endsWith(".class")
                        && TEXT.matcher(lower).matches()) {
                    try (InputStream content = zip.getInputStream(entry)) {
                        write(folder, entry.getName(), content.readAllBytes());
                    }
                    written.add(entry.getName());
                }
            }
        }
        Path ours = added.resolve(name + ".txt");
        if (Files.exists(ours)) {
            write(folder, "LICENSE.txt", Files.readAllBytes(ours));
            written.add("LICENSE.txt");
        }
        return !written.isEmpty();
    }

    private static void write(Path folder, String name, byte[] content) throws IOException {
        String shortName = name.startsWith("META-INF/") ? name.substring("META-INF/".length()) : name;
        Path file = folder.resolve(shortName).normalize();
        if (!file.startsWith(folder)) {
            throw new IOException("an entry points out of its folder: " + name);
        }
        Files.createDirectories(file.getParent() == null ? folder : file.getParent());
        Files.write(file, content);
    }
}
