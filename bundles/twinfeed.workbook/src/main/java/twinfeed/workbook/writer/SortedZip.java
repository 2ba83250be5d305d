// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * Takes the parts of a package as POI saves them and packs them once, sorted by name and with one fixed time, so that the same book
 * gives the same bytes. Rows of sheets that were streamed are put in their place while packing.
 */
final class SortedZip extends ZipArchiveOutputStream {
    /**
     * A time near the earliest that a zip entry can carry. Not the earliest one itself: to that the JDK adds a second time stamp, in
     * the time zone of the machine.
     */
    private static final LocalDateTime FIXED = LocalDateTime.of(1980, 2, 1, 0, 0);

    private static final byte[] PLACE = "<sheetData/>".getBytes(StandardCharsets.US_ASCII);

    private final Map<String, byte[]> parts = new TreeMap<>();
    private final Map<String, RowWriter> rows = new HashMap<>();
    private final ByteArrayOutputStream part = new ByteArrayOutputStream(8192);
    private @Nullable String name;

    SortedZip() {
        super(OutputStream.nullOutputStream());
    }

    /** The rows of a sheet's part, which the part itself leaves out. */
    void rows(String partName, RowWriter source) {
        rows.put(partName, source);
    }

    @Override
    public void putArchiveEntry(ZipArchiveEntry entry) {
        name = entry.getName();
        part.reset();
    }

    @Override
    public void write(int b) {
        part.write(b);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) {
        part.write(bytes, offset, length);
    }

    @Override
    public void closeArchiveEntry() {
        if (name != null) {
            parts.put(name, part.toByteArray());
            name = null;
        }
    }

    @Override
    public void flush() {
        // Nothing is written before the end.
    }

    @Override
    public void finish() {
        // The parts are packed by pack(), when all of them are known.
    }

    @Override
    public void close() {
        // Holds no resource.
    }

    /** Replaces the content of a part that is there. */
    void replace(String partName, byte[] content) {
        if (parts.replace(partName, content) == null) {
            throw new IllegalStateException("a book without " + partName);
        }
    }

    /** Packs all parts; the stream is flushed and left open. */
    void pack(OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        zip.setLevel(Deflater.BEST_COMPRESSION);
        for (Map.Entry<String, byte[]> entry : parts.entrySet()) {
            ZipEntry header = new ZipEntry(entry.getKey());
            header.setTimeLocal(FIXED);
            zip.putNextEntry(header);
            packPart(zip, entry.getKey(), entry.getValue());
            zip.closeEntry();
        }
        zip.finish();
        zip.flush();
    }

    private void packPart(ZipOutputStream zip, String partName, byte[] content) throws IOException {
        RowWriter source = rows.get(partName);
        int place = source == null ? -1 : place(content);
        if (source == null || place < 0) {
            zip.write(content);
            return;
        }
        zip.write(content, 0, place);
        zip.write("<sheetData>".getBytes(StandardCharsets.US_ASCII));
        try (InputStream stream = source.open()) {
            stream.transferTo(zip);
        }
        zip.write("</sheetData>".getBytes(StandardCharsets.US_ASCII));
        int rest = place + PLACE.length;
        zip.write(content, rest, content.length - rest);
    }

    private static int place(byte[] content) {
        for (int at = 0; at <= content.length - PLACE.length; at++) {
            if (java.util.Arrays.equals(content, at, at + PLACE.length, PLACE, 0, PLACE.length)) {
                return at;
            }
        }
        throw new IllegalStateException("a sheet without a place for its rows");
    }
}
