// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import twinfeed.document.QuoteDocument;

/** Writes the sample to a file and says how long each run took; for looking at it and for measuring a cold start. */
public final class WriteOnce {
    private WriteOnce() {}

    /** Arguments: file, number of runs, and "prepared" to do the fixed part first. */
    public static void main(String[] arguments) throws Exception {
        if (arguments.length > 2) {
            Watch preparing = new Watch();
            QuoteWorkbook.prepare();
            System.out.println("prepared " + preparing);
        }
        int runs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
        for (int run = 0; run < runs; run++) {
            Watch making = new Watch();
            QuoteDocument document = SampleQuote.document();
            String made = making.toString();
            Watch writing = new Watch();
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(arguments[0])))) {
                QuoteWorkbook.write(document, out);
            }
            System.out.printf("document %s; workbook %s%n", made, writing);
        }
    }
}
