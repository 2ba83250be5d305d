// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Copies jars with another manifest. The order of entries and their times stay, so that the same input gives the same bytes. */
final class Jars {
    private static final Set<String> SIGNATURES = Set.of("SF", "RSA", "DSA", "EC");

    private Jars() {}

    /** Takes the signatures off a jar, in place; one that has none is left as it is. */
    static void unsign(Path jar) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            if (zip.stream().noneMatch(entry -> signature(entry.getName()))) {
                return;
            }
        }
        Path unsigned = jar.resolveSibling(jar.getFileName() + ".unsigned");
        copy(jar, unsigned, Jars::withoutDigests);
        Files.move(unsigned, jar, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Copies a jar and names another on its class path. */
    static void withClassPath(Path jar, Path to, String classPath) throws IOException {
        copy(jar, to, manifest -> {
            manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, classPath);
            return manifest;
        });
    }

    private static boolean signature(String name) {
        String upper = name.toUpperCase(Locale.ROOT);
        return upper.matches("META-INF/[^/]+") && SIGNATURES.contains(upper.substring(upper.lastIndexOf('.') + 1));
    }

    private static Manifest withoutDigests(Manifest manifest) {
        manifest.getEntries().values().forEach(attributes -> attributes
                .keySet()
                .removeIf(name -> name.toString().toUpperCase(Locale.ROOT).endsWith("-DIGEST")));
        manifest.getEntries().values().removeIf(Attributes::isEmpty);
        return manifest;
    }

    private static void copy(Path from, Path to, UnaryOperator<Manifest> change) throws IOException {
        try (ZipFile zip = new ZipFile(from.toFile());
                OutputStream file = Files.newOutputStream(to);
                ZipOutputStream out = new ZipOutputStream(file)) {
            List<? extends ZipEntry> entries = Collections.list(zip.entries());
            for (ZipEntry entry : entries) {
                if (!signature(entry.getName())) {
                    copy(zip, entry, out, change);
                }
            }
        }
    }

    private static void copy(ZipFile zip, ZipEntry entry, ZipOutputStream out, UnaryOperator<Manifest> change)
            throws IOException {
        ZipEntry copied = new ZipEntry(entry.getName());
        copied.setTimeLocal(entry.getTimeLocal());
        out.putNextEntry(copied);
        try (InputStream content = zip.getInputStream(entry)) {
            if (entry.getName().equals(JarFile.MANIFEST_NAME)) {
                change.apply(new Manifest(content)).write(out);
            } else {
                content.transferTo(out);
            }
        }
        out.closeEntry();
    }
}
