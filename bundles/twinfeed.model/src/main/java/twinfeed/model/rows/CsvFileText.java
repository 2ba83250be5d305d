// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.rows;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import twinfeed.model.io.InputException;

/**
 * In which encoding a list was saved: UTF-8 with or without its mark, or the Windows-1252 that older spreadsheet programs write. What
 * is neither is refused, and a UTF-8 text with a broken letter is not taken for the other.
 */
final class CsvFileText {
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    /** Codes that Windows-1252 leaves free. */
    private static final String FREE = "\u0081\u008d\u008f\u0090\u009d";

    private final Path file;
    private int line = 1;
    private int firstForeignLine;
    private boolean severalBytes;
    private boolean free;

    private CsvFileText(Path file) {
        this.file = file;
    }

    /**
     * A reader of the text.
     *
     * @throws InputException if it is no text in either encoding
     */
    static Reader open(Path file) throws IOException {
        Charset charset = new CsvFileText(file).charset();
        Reader reader = new BufferedReader(new InputStreamReader(Files.newInputStream(file), charset.newDecoder()));
        reader.mark(1);
        if (reader.read() != '\ufeff') {
            reader.reset();
        }
        return reader;
    }

    private Charset charset() throws IOException {
        try (InputStream in = new java.io.BufferedInputStream(Files.newInputStream(file))) {
            for (int one = in.read(); one >= 0; one = in.read()) {
                take(one, in);
            }
        }
        if (firstForeignLine == 0) {
            return StandardCharsets.UTF_8;
        }
        if (severalBytes || free) {
            throw RowRefusal.of(file.toString(), firstForeignLine, "encoding");
        }
        return WINDOWS;
    }

    private void take(int first, InputStream in) throws IOException {
        if (first == 0) {
            throw RowRefusal.of(file.toString(), line, "noText");
        }
        line += first == '\n' ? 1 : 0;
        if (first < 0x80) {
            return;
        }
        in.mark(4);
        int more = first >= 0xF0 && first <= 0xF4
                ? 3
                : first >= 0xE0 && first < 0xF0 ? 2 : first >= 0xC2 && first < 0xE0 ? 1 : 0;
        boolean whole = more > 0;
        for (int i = 0; i < more && whole; i++) {
            int next = in.read();
            whole = next >= 0x80 && next < 0xC0;
        }
        if (whole) {
            severalBytes = true;
        } else {
            in.reset();
            firstForeignLine = firstForeignLine == 0 ? line : firstForeignLine;
            free |= FREE.indexOf(first) >= 0;
        }
    }
}
