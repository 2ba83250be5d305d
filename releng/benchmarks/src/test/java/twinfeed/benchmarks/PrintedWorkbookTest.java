// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.workbook.Office;

/** What LibreOffice prints of the workbooks of the demonstration, and how large their files are. */
class PrintedWorkbookTest {
    private static final int MOST_PAGES = 11;
    private static final int MOST_BYTES = 235_000;
    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page[^s]");

    private final Books books = new Books();

    @TempDir
    private Path folder;

    @Test
    void aWorkbookIsSmallAndPrintsOnFewPages() throws Exception {
        Office.assumePresent();
        Map<String, Path> files = new LinkedHashMap<>();
        for (String job : List.of("alder-beck", "rowan-brook", "hazel-ghyll", "willow-mere", "birch-syke")) {
            for (Locale locale : List.of(Locale.UK, Locale.GERMANY)) {
                byte[] book = books.of(books.opened(job + ".job"), locale);
                String name = job + "-" + locale.getLanguage();
                assertTrue(book.length < MOST_BYTES, name + ": " + book.length + " bytes");
                files.put(name, Files.write(folder.resolve(name + ".xlsx"), book));
            }
        }
        Office.convert(folder, "pdf", files.values().toArray(new Path[0]));
        for (String job : files.keySet()) {
            byte[] pdf = Files.readAllBytes(folder.resolve("out").resolve(job + ".pdf"));
            long pages = PAGE.matcher(new String(pdf, StandardCharsets.ISO_8859_1))
                    .results()
                    .count();
            System.out.println(job + ": " + pages + " pages, " + Files.size(files.get(job)) + " bytes");
            assertTrue(pages >= 5 && pages <= MOST_PAGES, job + ": " + pages + " pages");
        }
    }
}
