// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Replaces the value beside every formula of a book by a wrong one. */
final class Poison {
    static final double NUMBER = -98765.4321;

    private Poison() {}

    static byte[] formulas(byte[] book) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(book));
                ZipOutputStream to = new ZipOutputStream(out)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                to.putNextEntry(new ZipEntry(entry.getName()));
                byte[] content = from.readAllBytes();
                to.write(entry.getName().startsWith("xl/worksheets/sheet") ? poisoned(content) : content);
            }
        }
        return out.toByteArray();
    }

    private static byte[] poisoned(byte[] sheet) {
        return new String(sheet, StandardCharsets.UTF_8)
                .replaceAll("(</f>|<f [^>]*/>)<v>[^<]*</v>", "$1<v>" + NUMBER + "</v>")
                .getBytes(StandardCharsets.UTF_8);
    }
}
