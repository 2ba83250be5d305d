// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows of cells that lie in a temporary file until it is known in which order they are wanted. In memory each entry takes 8 bytes, whatever it
 * holds.
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
        if (size == starts.length) {
            starts = Arrays.copyOf(starts, size * 2);
        }
        starts[size++] = end;
        ByteBuffer buffer = ByteBuffer.wrap(ResultCells.bytes(sheets));
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
        return ResultCells.of(buffer.array());
    }

    /** Removes the temporary file. */
    @Override
    public void close() throws IOException {
        file.close();
    }
}
