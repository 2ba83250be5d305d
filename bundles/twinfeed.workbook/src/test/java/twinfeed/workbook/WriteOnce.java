// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the sample to a file and says how long each run took; for looking at it and for measuring a cold start. */
public final class WriteOnce {
    private WriteOnce() {}

    /** Arguments: file, number of runs. */
    public static void main(String[] arguments) throws Exception {
        int runs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
        for (int run = 0; run < runs; run++) {
            long start = System.nanoTime();
            QuoteDocument document = SampleQuote.document();
            long made = System.nanoTime();
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(arguments[0])))) {
                QuoteWorkbook.write(document, out);
            }
            System.out.printf(
                    "document %.0f ms, workbook %.0f ms%n", (made - start) / 1e6, (System.nanoTime() - made) / 1e6);
        }
    }
}
