// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * Gives a PDF as FOP has written it what depends on the document alone: FOP writes the clock and the machine's time zone into its
 * metadata and a number made of the clock behind them. The file's identity becomes a digest of its content. Besides, the list of a
 * font's letters ({@code CIDSet}) goes, which PDF/UA-1 (ISO 14289-1, 7.21.4.2) allows to leave out and FOP does not make as it asks.
 *
 * <p>Objects are moved as they are; only the cross-reference stream (ISO 32000-1, 7.5.8) is written anew.
 */
final class PdfNormalizer {
    /** Widths of the fields of an entry as FOP writes them: kind, offset, number in its stream. */
    private static final String WIDTHS = "/W [1 8 2]";

    private static final int ENTRY = 11;
    private static final int ID_BYTES = 16;
    private static final byte IN_FILE = 1;
    private static final Pattern FONT_LETTERS = Pattern.compile("\\s*/CIDSet \\d+ \\d+ R");

    private final DocumentInfo about;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);

    PdfNormalizer(DocumentInfo about) {
        this.about = about;
    }

    /** Closes a file of FOP's. */
    byte[] close(byte[] pdf) throws IOException {
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        int tableAt = Integer.parseInt(find(text, "startxref\\s+(\\d+)\\s+%%EOF\\s*$", 1));
        String table = text.substring(tableAt);
        if (!table.contains(WIDTHS)) {
            throw new IOException("the cross-references are of another kind than FOP 2.10 writes");
        }
        ByteBuffer entries = ByteBuffer.wrap(inflated(pdf, tableAt, table));
        Map<Integer, Integer> places = places(entries);
        move(text, pdf, places, tableAt, entries);
        table(table, entries);
        return out.toByteArray();
    }

    /** Offsets of the objects, with the place of each one's entry. */
    private static Map<Integer, Integer> places(ByteBuffer entries) {
        Map<Integer, Integer> places = new TreeMap<>();
        for (int at = 0; at + ENTRY <= entries.capacity(); at += ENTRY) {
            if (entries.get(at) == IN_FILE) {
                places.put((int) entries.getLong(at + 1), at);
            }
        }
        return places;
    }

    private void move(String text, byte[] pdf, Map<Integer, Integer> places, int end, ByteBuffer entries) {
        Integer[] offsets =
                places.keySet().stream().filter(offset -> offset < end).toArray(Integer[]::new);
        String info = find(text.substring(end), "/Info (\\d+) 0 R", 1) + " 0 obj";
        // The length of FOP's own packet, which depends on the time zone, is an object of its own.
        String length = find(text, "/Type /Metadata[^>]*/Length (\\d+) 0 R", 1) + " 0 obj";
        out.write(pdf, 0, offsets[0]);
        for (int at = 0; at < offsets.length; at++) {
            int from = offsets[at];
            int to = at + 1 < offsets.length ? offsets[at + 1] : end;
            entries.putLong(places.getOrDefault(from, 0) + 1, out.size());
            out.writeBytes(object(text.substring(from, to), Arrays.copyOfRange(pdf, from, to), info, length));
        }
    }

    private byte[] object(String text, byte[] bytes, String info, String length) {
        String start = text.substring(0, text.indexOf(" obj") + " obj".length());
        if (start.equals(info)) {
            return latin(start + "\n" + new PdfMetadata(about).info() + "\nendobj\n");
        }
        byte[] packet = new PdfMetadata(about).packet().getBytes(StandardCharsets.UTF_8);
        if (start.equals(length)) {
            return latin(start + "\n" + packet.length + "\nendobj\n");
        }
        if (text.contains("/Type /Metadata")) {
            return joined(
                    latin(start + "\n<< /Type /Metadata /Subtype /XML /Length " + packet.length + " >>\nstream\n"),
                    packet,
                    latin("\nendstream\nendobj\n"));
        }
        return text.contains("/Type /FontDescriptor")
                ? latin(FONT_LETTERS.matcher(text).replaceAll(""))
                : bytes;
    }

    private void table(String table, ByteBuffer entries) {
        int at = out.size();
        int own = Integer.parseInt(find(table, "^(\\d+) 0 obj", 1));
        if ((own + 1) * ENTRY <= entries.capacity()) {
            entries.put(own * ENTRY, IN_FILE).putLong(own * ENTRY + 1, at);
        }
        byte[] packed = deflated(entries.array());
        String id = HexFormat.of().withUpperCase().formatHex(digest(), 0, ID_BYTES);
        String dictionary =
                "%d 0 obj\n<< /Type /XRef %s %s /Size %s %s /ID [<%s> <%s>] /Length %d /Filter /FlateDecode >>\nstream\n"
                        .formatted(
                                own,
                                find(table, "/Root \\d+ 0 R", 0),
                                find(table, "/Info \\d+ 0 R", 0),
                                find(table, "/Size (\\d+)", 1),
                                WIDTHS,
                                id,
                                id,
                                packed.length);
        out.writeBytes(joined(latin(dictionary), packed, latin("\nendstream\nendobj\nstartxref\n" + at + "\n%%EOF\n")));
    }

    private byte[] digest() {
        try {
            return MessageDigest.getInstance("SHA-256").digest(out.toByteArray());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static byte[] inflated(byte[] pdf, int at, String table) throws IOException {
        int length = Integer.parseInt(find(table, "/Length (\\d+)", 1));
        Matcher begin = Pattern.compile("stream\r?\n").matcher(table);
        if (!begin.find()) {
            throw new IOException("cross-references without a stream");
        }
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(pdf, at + begin.end(), length);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            byte[] buffer = new byte[1 << 12];
            for (int read = inflater.inflate(buffer); read > 0; read = inflater.inflate(buffer)) {
                bytes.write(buffer, 0, read);
            }
            return bytes.toByteArray();
        } catch (DataFormatException broken) {
            throw new IOException("cross-references that cannot be read", broken);
        } finally {
            inflater.end();
        }
    }

    private static byte[] deflated(byte[] bytes) {
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
        deflater.setInput(bytes);
        deflater.finish();
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        byte[] buffer = new byte[1 << 12];
        while (!deflater.finished()) {
            packed.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return packed.toByteArray();
    }

    private static String find(String text, String pattern, int group) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        if (!matcher.find()) {
            throw new IllegalStateException("FOP's file has no " + pattern);
        }
        return matcher.group(group);
    }

    private static byte[] latin(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }
}
