// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.life;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a file that must not be there yet: whole or not at all, and only one of two writers succeeds. */
final class NewFile {
    private NewFile() {}

    /**
     * Writes it.
     *
     * @throws FileAlreadyExistsException if it is there already; it is left as it is
     * @throws IOException if it cannot be written
     */
    static void write(Path file, byte[] content) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        Path fresh = Files.createTempFile(folder, ".new-", ".tmp");
        try {
            try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(content);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            link(fresh, file);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** A second name for a finished file is given atomically, and not if the name is taken; a move might replace. */
    private static void link(Path fresh, Path file) throws IOException {
        try {
            Files.createLink(file, fresh);
        } catch (UnsupportedOperationException noLinks) {
            Files.move(fresh, file);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (java.nio.file.FileSystemException noLinks) {
            // Drives without links, memory sticks for example, say so in this way.
            Files.move(fresh, file);
        }
    }
}
