// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Verdict;

/**
 * Rows of cells that lie in a temporary file until it is known in which order they are wanted. In memory each entry takes 8 bytes, whatever it
 * holds. A cell is a text, a whole number, a decimal, a day, a verdict or nothing.
 */
final class RowStore implements AutoCloseable {
    private final FileChannel file;
    private long[] starts = new long[1 << 8];
    private int size;
    private long end;

    /** An empty one. */
    RowStore() throws IOException {
        Path path = Files.createTempFile("twinfeed-dwellings", ".tmp");
        file = FileChannel.open(
                path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
    }

    /** How many entries there are. */
    int size() {
        return size;
    }

    /** Adds an entry: rows for several sheets. */
    void add(List<List<List<@Nullable Object>>> sheets) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 12);
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(sheets.size());
        for (List<List<@Nullable Object>> rows : sheets) {
            out.writeInt(rows.size());
            for (List<@Nullable Object> row : rows) {
                out.writeInt(row.size());
                for (Object cell : row) {
                    write(cell, out);
                }
            }
        }
        if (size == starts.length) {
            starts = Arrays.copyOf(starts, size * 2);
        }
        starts[size++] = end;
        ByteBuffer buffer = ByteBuffer.wrap(bytes.toByteArray());
        while (buffer.hasRemaining()) {
            end += file.write(buffer, end);
        }
    }

    /** An entry, by its number from 0. */
    List<List<List<@Nullable Object>>> get(int entry) throws IOException {
        long until = entry + 1 < size ? starts[entry + 1] : end;
        ByteBuffer buffer = ByteBuffer.allocate((int) (until - starts[entry]));
        while (buffer.hasRemaining()) {
            if (file.read(buffer, starts[entry] + buffer.position()) < 0) {
                throw new IOException("the temporary file was cut off");
            }
        }
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(buffer.array()));
        List<List<List<@Nullable Object>>> sheets = new ArrayList<>();
        for (int sheet = in.readInt(); sheet > 0; sheet--) {
            List<List<@Nullable Object>> rows = new ArrayList<>();
            for (int row = in.readInt(); row > 0; row--) {
                List<@Nullable Object> cells = new ArrayList<>();
                for (int cell = in.readInt(); cell > 0; cell--) {
                    cells.add(read(in));
                }
                rows.add(cells);
            }
            sheets.add(rows);
        }
        return sheets;
    }

    private static void write(@Nullable Object cell, DataOutputStream out) throws IOException {
        if (cell == null) {
            out.writeByte('-');
        } else if (cell instanceof Integer number) {
            out.writeByte('i');
            out.writeInt(number);
        } else if (cell instanceof Verdict verdict) {
            out.writeByte('v');
            out.writeInt(verdict.getValue());
        } else {
            out.writeByte(cell instanceof BigDecimal ? 'n' : cell instanceof LocalDate ? 'd' : 't');
            byte[] text = cell.toString().getBytes(StandardCharsets.UTF_8);
            out.writeInt(text.length);
            out.write(text);
        }
    }

    private static @Nullable Object read(DataInputStream in) throws IOException {
        int kind = in.readByte();
        if (kind == '-') {
            return null;
        }
        int number = in.readInt();
        if (kind == 'i') {
            return number;
        }
        if (kind == 'v') {
            return Verdict.get(number);
        }
        String text = new String(in.readNBytes(number), StandardCharsets.UTF_8);
        return kind == 'n' ? new BigDecimal(text) : kind == 'd' ? LocalDate.parse(text) : text;
    }

    /** Removes the temporary file. */
    @Override
    public void close() throws IOException {
        file.close();
    }
}
