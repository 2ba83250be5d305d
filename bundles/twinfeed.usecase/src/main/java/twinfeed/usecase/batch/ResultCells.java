// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Verdict;

/** Groups of rows of cells as bytes. A cell is a text, a whole number, a decimal, a day, a verdict or nothing. */
final class ResultCells {
    private ResultCells() {}

    /** The bytes of some groups of rows. */
    static byte[] bytes(List<List<List<@Nullable Object>>> groups) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 12);
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(groups.size());
        for (List<List<@Nullable Object>> rows : groups) {
            out.writeInt(rows.size());
            for (List<@Nullable Object> row : rows) {
                out.writeInt(row.size());
                for (Object cell : row) {
                    write(cell, out);
                }
            }
        }
        return bytes.toByteArray();
    }

    /** The groups that some bytes were made of. */
    static List<List<List<@Nullable Object>>> of(byte[] bytes) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        List<List<List<@Nullable Object>>> groups = new ArrayList<>();
        for (int group = in.readInt(); group > 0; group--) {
            List<List<@Nullable Object>> rows = new ArrayList<>();
            for (int row = in.readInt(); row > 0; row--) {
                List<@Nullable Object> cells = new ArrayList<>();
                for (int cell = in.readInt(); cell > 0; cell--) {
                    cells.add(read(in));
                }
                rows.add(cells);
            }
            groups.add(rows);
        }
        return groups;
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
}
