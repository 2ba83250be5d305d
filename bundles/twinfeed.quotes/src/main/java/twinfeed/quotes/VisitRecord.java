// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.AtomicFile;

/**
 * The visits that were agreed for an accepted quote, each in {@code NAME.quote.visit-1} and so on; the last one holds. How many there were tells a
 * calendar which of its entries is the newest.
 */
final class VisitRecord {
    private VisitRecord() {}

    private static Path file(Path quote, int number) {
        return quote.resolveSibling(quote.getFileName() + ".visit-" + number);
    }

    /** How many were recorded. */
    static int count(Path quote) {
        int count = 0;
        while (Files.exists(file(quote, count + 1))) {
            count++;
        }
        return count;
    }

    /** Records one after those that are there. */
    static void add(Path quote, LocalDateTime begin, Duration length) throws IOException {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("begin", begin.toString());
        tree.put("length", length.toString());
        byte[] bytes = CanonicalJson.write(tree).getBytes(StandardCharsets.UTF_8);
        while (true) {
            try {
                AtomicFile.create(file(quote, count(quote) + 1), bytes);
                return;
            } catch (FileAlreadyExistsException other) {
                // Somebody else was faster; this visit comes after that one.
            }
        }
    }
}
