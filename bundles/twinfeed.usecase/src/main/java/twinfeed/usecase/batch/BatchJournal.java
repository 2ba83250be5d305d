// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.InputException;
import twinfeed.usecase.refusal.Refusals;

/**
 * What came of the rows of a list so far, in a hidden file beside the result. Work that was stopped, by whomever or whatever, is taken up
 * again from there: the same list judged by the same means gives the same, so a row that is in the journal need not be judged again. Once
 * the result is written the file is removed.
 *
 * <p>The file holds the identity of the work, then an entry a row in the order of the list: row, length, check sum, bytes. An entry that was cut off,
 * or does not fit its check sum, ends it. One process at a time has it.
 */
final class BatchJournal implements AutoCloseable {
    private static final int HEAD = 3 * Integer.BYTES;

    /** No row of a list needs as much. */
    private static final int LARGEST_ENTRY = 1 << 26;

    private final Path path;
    private final FileChannel file;
    private final FileLock lock;
    private final long begin;
    private long position;
    private long end;
    private int takenOver;
    private boolean finished;

    /** What came of one row: it was judged, or it is refused. */
    record Entry(int row, @Nullable DwellingResult result, @Nullable Refused refused) {
        private List<List<List<@Nullable Object>>> groups() {
            if (result != null) {
                return result.groups();
            }
            Refused one = refusedRow();
            return List.of(List.of(List.of(one.row(), one.dwelling(), one.reason())));
        }

        private Refused refusedRow() {
            return Objects.requireNonNull(refused);
        }

        /** What a plain list says of it. */
        List<@Nullable Object> line() {
            return result == null ? ResultLine.of(refusedRow()) : result.line();
        }

        private static Entry of(int row, List<List<List<@Nullable Object>>> groups) {
            if (groups.size() > 1) {
                return new Entry(row, DwellingResult.of(groups), null);
            }
            List<@Nullable Object> cells = groups.get(0).get(0);
            return new Entry(
                    row,
                    null,
                    new Refused(
                            (Integer) Objects.requireNonNull(cells.get(0)),
                            String.valueOf(cells.get(1)),
                            String.valueOf(cells.get(2))));
        }
    }

    private BatchJournal(Path path, FileChannel file, FileLock lock, byte[] identity) throws IOException {
        this.path = path;
        this.file = file;
        this.lock = lock;
        byte[] before = read(0, identity.length);
        if (Arrays.equals(before, identity)) {
            end = file.size();
        } else {
            file.truncate(0);
            write(ByteBuffer.wrap(identity), 0);
            end = identity.length;
        }
        begin = identity.length;
        position = begin;
    }

    /** Where the journal of a result lies. */
    static Path beside(Path out) {
        return out.toAbsolutePath().resolveSibling("." + out.getFileName() + ".judged");
    }

    /**
     * Opens the journal of a result; one of other work is begun anew.
     *
     * @param identity tells what work it is
     * @throws InputException if another process has it
     * @throws IOException if it can be neither read nor written
     */
    static BatchJournal of(Path out, byte[] identity) throws IOException {
        Path path = beside(out);
        FileChannel file = AtomicFile.openOwn(path);
        try {
            FileLock lock = lock(file);
            if (lock == null) {
                throw new InputException(Refusals.ofFile(out, "list.busy"));
            }
            return new BatchJournal(path, file, lock, identity);
        } catch (IOException | RuntimeException failed) {
            file.close();
            throw failed;
        }
    }

    private static @Nullable FileLock lock(FileChannel file) throws IOException {
        try {
            return file.tryLock();
        } catch (OverlappingFileLockException ourOwn) {
            return null;
        }
    }

    /**
     * What came of a row, where it was judged before; null where it was not. Rows are asked for in their order.
     *
     * @throws IOException if the file cannot be read
     */
    @Nullable
    Entry next(int row) throws IOException {
        Stored stored = position < end ? stored(position) : null;
        if (stored == null || stored.row() != row) {
            cut();
            return null;
        }
        position += stored.length();
        takenOver++;
        return stored.entry();
    }

    /** An entry as it lies in the file. */
    private record Stored(int row, byte[] bytes) {
        long length() {
            return HEAD + (long) bytes.length;
        }

        Entry entry() throws IOException {
            return Entry.of(row, ResultCells.of(bytes));
        }
    }

    /** The entry at a place; null if it was cut off or is damaged. */
    private @Nullable Stored stored(long at) throws IOException {
        ByteBuffer head = ByteBuffer.wrap(read(at, HEAD));
        if (head.remaining() < HEAD) {
            return null;
        }
        int row = head.getInt();
        int length = head.getInt();
        int sum = head.getInt();
        if (length < 0 || length > LARGEST_ENTRY) {
            return null;
        }
        byte[] bytes = read(at + HEAD, length);
        return bytes.length == length && sum(bytes) == sum ? new Stored(row, bytes) : null;
    }

    /** What follows was cut off or is of another list: it is written anew. */
    private void cut() throws IOException {
        if (position < end && file.size() > position) {
            file.truncate(position);
        }
        end = position;
    }

    /**
     * Adds what came of a row.
     *
     * @throws IOException if there is no room for it
     */
    void add(Entry entry) throws IOException {
        byte[] bytes = ResultCells.bytes(entry.groups());
        ByteBuffer buffer = ByteBuffer.allocate(HEAD + bytes.length);
        buffer.putInt(entry.row()).putInt(bytes.length).putInt(sum(bytes)).put(bytes);
        buffer.flip();
        write(buffer, end);
        end += HEAD + bytes.length;
        position = end;
    }

    /** Takes what came of a row. */
    interface Taker {
        /** Takes it. */
        void take(Entry entry) throws IOException;
    }

    /**
     * Hands on what came of all rows, in their order.
     *
     * @throws IOException if the file cannot be read
     */
    void each(Taker taker) throws IOException {
        for (long at = begin; at < end; ) {
            Stored stored = stored(at);
            if (stored == null) {
                throw new IOException(path + " was changed while it was in use");
            }
            taker.take(stored.entry());
            at += stored.length();
        }
    }

    /** How many rows were judged before. */
    int takenOver() {
        return takenOver;
    }

    /** The result is written: nobody needs the journal any more. */
    void finish() {
        finished = true;
    }

    private static int sum(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes);
        return (int) sum.getValue();
    }

    /** So many bytes, or fewer at the end of the file. */
    private byte[] read(long from, int count) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(count);
        while (buffer.hasRemaining()) {
            int read = file.read(buffer, from + buffer.position());
            if (read < 0) {
                break;
            }
        }
        return Arrays.copyOf(buffer.array(), buffer.position());
    }

    private void write(ByteBuffer bytes, long at) throws IOException {
        long to = at;
        while (bytes.hasRemaining()) {
            to += file.write(bytes, to);
        }
    }

    @Override
    public void close() throws IOException {
        // What was judged before stays, even where work ended before its first row was asked for.
        boolean empty = end == begin;
        lock.release();
        file.close();
        if (finished || empty) {
            Files.deleteIfExists(path);
        }
    }
}
