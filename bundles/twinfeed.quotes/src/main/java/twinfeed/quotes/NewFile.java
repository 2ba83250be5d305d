// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a file that must not be there yet: whole or not at all, and only one of two writers succeeds. */
final class NewFile {
    private static final int MOST_NAMES = 1000;

    private NewFile() {}

    /**
     * Writes it, with the rights that files of this user have: a colleague can read it.
     *
     * @throws FileAlreadyExistsException if it is there already; it is left as it is
     * @throws IOException if it cannot be written
     */
    static void write(Path file, byte[] content) throws IOException {
        Path target = file.toAbsolutePath();
        Files.createDirectories(target.getParent());
        Path fresh = fresh(target, content);
        try {
            link(fresh, target);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** The content under a name of its own; names left behind by a program that stopped are passed over. */
    private static Path fresh(Path target, byte[] content) throws IOException {
        for (int i = 1; i <= MOST_NAMES; i++) {
            Path fresh = target.resolveSibling("." + target.getFileName() + ".new-" + i);
            try (FileChannel channel =
                    FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(content);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
                return fresh;
            } catch (FileAlreadyExistsException taken) {
                // By another writer or a program that stopped: the next name.
            } catch (IOException full) {
                Files.deleteIfExists(fresh);
                throw full;
            }
        }
        throw new IOException(target + ": too many unfinished copies beside it");
    }

    /** A second name for a finished file is given atomically, and not if the name is taken; a move might replace. */
    private static void link(Path fresh, Path file) throws IOException {
        try {
            Files.createLink(file, fresh);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (UnsupportedOperationException | FileSystemException noLinks) {
            // Drives without links, memory sticks for example.
            Files.move(fresh, file);
        }
    }
}
