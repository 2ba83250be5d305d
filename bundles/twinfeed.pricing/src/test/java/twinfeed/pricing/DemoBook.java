// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.pricing.book.PriceBookCsv;

/** The price book that is shipped for demonstration. */
public final class DemoBook {
    /** A day on which it holds. */
    public static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private DemoBook() {}

    /** Its file, found from whatever folder the tests run in. */
    public static Path file() {
        Path folder = Path.of("").toAbsolutePath();
        while (folder != null && !Files.exists(folder.resolve("demo/prices.csv"))) {
            folder = folder.getParent();
        }
        return java.util.Objects.requireNonNull(folder, "demo/prices.csv").resolve("demo/prices.csv");
    }

    /** A copy of one's own. */
    public static PriceBook read() {
        return PriceBookCsv.read(file()).bookOrThrow();
    }
}
