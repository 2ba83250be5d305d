// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.checks.Product.Run;

/** The sample calculator is built against the product's jars and put into its folder, and is there; it is taken out, and is gone. */
class ProductExtensionTest {
    @TempDir
    private Path scratch = Path.of("");

    @Test
    void appearsEverywhereAndGoesAgain() throws IOException {
        Product product = Product.copyTo(scratch.resolve("a product"));
        String before = product.run("plugins").out();
        assertFalse(before.contains("Energy"), before);

        Path folder = Files.createDirectory(product.folder().resolve("calculators"));
        Files.writeString(folder.resolve("broken.jar"), "no jar: must not keep the other out");
        SampleCalculator sample = new SampleCalculator(product.folder().resolve("plugins"), scratch.resolve("sample"));
        sample.build(folder.resolve("energy-1.jar"), "1.0.0");
        Run with = product.run("plugins");
        assertEquals(0, with.status(), with.err());
        assertTrue(with.out().contains("energy 1.0.0  Energy"), with.out() + with.err());
        assertTrue(with.err().contains("broken.jar"), with.err());
        Run assessed = product.run("assess", "demo/rowan-brook.job", "--json");
        assertEquals(0, assessed.status(), assessed.err());
        assertTrue(assessed.out().contains("\"energy.shower\""), assessed.err());
        assertTrue(assessed.out().contains("One shower of 8 minutes takes 1.3 kWh."), "9.5 kW for 8 minutes: 1.27 kWh");

        sample.build(folder.resolve("energy-2.jar"), "2.0.0");
        Run both = product.run("plugins");
        assertEquals(0, both.status(), both.err());
        assertTrue(both.out().contains("energy 2.0.0  Energy"), both.out());
        assertTrue(both.err().contains("energy-1.jar"), "the old one is named: " + both.err());

        for (String name : new String[] {"energy-1.jar", "energy-2.jar", "broken.jar"}) {
            Files.delete(folder.resolve(name));
        }
        Run without = product.run("plugins");
        assertEquals(before, without.out());
        assertEquals("", without.err());
    }
}
