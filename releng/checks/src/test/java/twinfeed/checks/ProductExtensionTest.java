// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.checks.Product.Run;
import twinfeed.checks.sample.CupboardCalculator;

/** A third party's calculator is put into a folder of the product, and is there; it is taken out, and is gone. */
class ProductExtensionTest {
    private static final List<String> CONTENT = List.of(
            "twinfeed/checks/sample/CupboardCalculator.class",
            "twinfeed/checks/sample/Cupboard.properties",
            "OSGI-INF/cupboard.xml");

    @TempDir
    private Path scratch = Path.of("");

    @Test
    void appearsEverywhereAndGoesAgain() throws IOException {
        Product product = Product.copyTo(scratch.resolve("a product"));
        String before = product.run("plugins").out();
        assertFalse(before.contains("Cupboard"), before);

        Path folder = Files.createDirectory(product.folder().resolve("calculators"));
        Files.writeString(folder.resolve("broken.jar"), "no jar: must not keep the other out");
        bundle(folder.resolve("cupboard.jar"));
        Run with = product.run("plugins");
        assertEquals(0, with.status(), with.err());
        assertTrue(with.out().contains("Cupboard"), with.out() + with.err());
        assertTrue(with.err().contains("broken.jar"), with.err());
        Run assessed = product.run("assess", "demo/rowan-brook.job", "--json");
        assertTrue(assessed.out().contains("\"cupboard.room\""), assessed.err());

        Files.delete(folder.resolve("cupboard.jar"));
        Files.delete(folder.resolve("broken.jar"));
        Run without = product.run("plugins");
        assertEquals(before, without.out());
        assertEquals("", without.err());
    }

    private static void bundle(Path file) throws IOException {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue("Bundle-ManifestVersion", "2");
        main.putValue("Bundle-SymbolicName", "cupboard");
        main.putValue("Bundle-Version", "7.0.0");
        main.putValue("Import-Package", "twinfeed.calculator");
        main.putValue("Service-Component", "OSGI-INF/cupboard.xml");
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(file), manifest)) {
            for (String name : CONTENT) {
                jar.putNextEntry(new ZipEntry(name));
                try (InputStream content = CupboardCalculator.class.getResourceAsStream("/" + name)) {
                    assertTrue(content != null, name);
                    content.transferTo(jar);
                }
            }
        }
    }
}
