// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Names of files that are being written, {@code .NAME.PROCESS-TIME-COUNT.part}, and those that a program left behind when it
 * was stopped: nobody holds a lock on them.
 */
final class PartFiles {
    private static final Pattern NAME = Pattern.compile("\\..+\\.[0-9a-f]+-[0-9a-f]+-[0-9a-f]+\\.part");
    private static final AtomicLong COUNT = new AtomicLong();

    /**
     * Those of this process. To open and close one of them would give up its lock, for systems that follow POSIX keep one lock
     * for all openings of a file by a process.
     */
    private static final Set<Path> OURS = ConcurrentHashMap.newKeySet();

    private PartFiles() {}

    /** A name that nobody else has. */
    static Path fresh(Path target) {
        String own = Long.toHexString(ProcessHandle.current().pid()) + "-" + Long.toHexString(System.nanoTime()) + "-"
                + Long.toHexString(COUNT.incrementAndGet());
        Path part = target.resolveSibling("." + target.getFileName() + "." + own + ".part");
        OURS.add(part);
        return part;
    }

    static void forget(Path part) {
        OURS.remove(part);
    }

    /** Removes what stopped programs left in a folder; what cannot be read or removed stays. */
    static void removeLeftovers(@Nullable Path folder) {
        if (folder == null || !Files.isDirectory(folder)) {
            return;
        }
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, ".*.part")) {
            for (Path part : parts) {
                if (NAME.matcher(String.valueOf(part.getFileName())).matches() && !OURS.contains(part)) {
                    removeIfLeft(part);
                }
            }
        } catch (IOException unreadable) {
            return; // then nothing of it is removed
        }
    }

    private static void removeIfLeft(Path part) throws IOException {
        if (!Files.isRegularFile(part, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
            @Nullable FileLock lock = channel.tryLock();
            if (lock != null) {
                Files.deleteIfExists(part);
            }
        } catch (IOException | OverlappingFileLockException another) {
            return; // somebody's own, or gone
        }
    }
}
