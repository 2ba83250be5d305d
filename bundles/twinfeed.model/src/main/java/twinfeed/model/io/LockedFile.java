// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Lets one writer at a time read a file, change it and write it, on this machine and on drives that know locks. The lock is a
 * file {@code .NAME.lock} beside it, which goes when the work is done; the system gives it up when a program is stopped, so
 * that one left behind blocks nobody.
 */
public final class LockedFile {
    /** Locks of the system tell processes apart, not threads. Re-entrant, so that a step may hold what it is given already. */
    private static final ReentrantLock THREADS = new ReentrantLock();

    private LockedFile() {}

    /**
     * Takes a step while nobody else that asks here takes one with the same file.
     *
     * @param file the file that the step reads or writes; a link is followed
     * @throws InputException if no lock can be had because nothing can be written in its folder
     */
    public static <T> T during(Path file, Supplier<T> step) {
        THREADS.lock();
        try {
            if (THREADS.getHoldCount() > 1) {
                return step.get();
            }
            Path real = Files.exists(file)
                    ? file.toRealPath()
                    : file.toAbsolutePath().normalize();
            return locked(real.resolveSibling("." + real.getFileName() + ".lock"), step);
        } catch (IOException e) {
            throw AtomicFile.failed(file, e);
        } finally {
            THREADS.unlock();
        }
    }

    private static <T> T locked(Path lock, Supplier<T> step) throws IOException {
        try (FileChannel channel = acquire(lock)) {
            try {
                return step.get();
            } finally {
                // Before the lock ends with the channel: whoever waits for this file sees that its name is gone, and
                // begins anew.
                Files.deleteIfExists(lock);
            }
        }
    }

    /** What has the name before it is opened and after it is locked is one file: not one that its last holder has removed. */
    private static FileChannel acquire(Path lock) throws IOException {
        while (true) {
            make(lock);
            @Nullable Object before = key(lock);
            FileChannel channel = before == null ? null : open(lock);
            if (channel == null) {
                continue;
            }
            if (held(channel) && Objects.equals(before, key(lock))) {
                return channel;
            }
            channel.close();
        }
    }

    private static void make(Path lock) throws IOException {
        try {
            Files.createFile(lock, FileRights.ofNew(lock));
        } catch (FileAlreadyExistsException there) {
            return; // somebody holds it, or left it behind
        }
    }

    private static @Nullable FileChannel open(Path lock) throws IOException {
        try {
            return FileChannel.open(lock, StandardOpenOption.WRITE);
        } catch (NoSuchFileException gone) {
            return null;
        }
    }

    /** A drive without locks lets everybody go on; what lies there is compared all the same. */
    private static boolean held(FileChannel channel) {
        try {
            FileLock lock = channel.lock();
            return lock.isValid();
        } catch (IOException unsupported) {
            return true;
        }
    }

    /** What tells the file of a name from another one of the same name; null if there is none. */
    private static @Nullable Object key(Path lock) throws IOException {
        try {
            @Nullable
            Object key = Files.readAttributes(lock, BasicFileAttributes.class).fileKey();
            return key == null ? lock : key;
        } catch (NoSuchFileException gone) {
            return null;
        }
    }
}
