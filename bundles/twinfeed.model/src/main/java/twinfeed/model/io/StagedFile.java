// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A file on its way: it lies under a name of its own in the folder of its target and takes the target's name only when it is
 * complete and on the disk. While it lies there its writer holds a lock on it, by which the next writer in that folder tells a
 * file of a program that was stopped, and removes it, from one that is being written.
 */
public final class StagedFile implements AutoCloseable {
    private static final int BLOCK = 1 << 16;

    private final Path target;
    private final Path part;
    private final FileChannel channel;
    private boolean placed;

    private StagedFile(Path target, Path part, FileChannel channel) {
        this.target = target;
        this.part = part;
        this.channel = channel;
    }

    /**
     * Begins a file. A link at its place is followed.
     *
     * @param path its place
     * @throws IOException if nothing can be written in its folder
     */
    public static StagedFile at(Path path) throws IOException {
        Path target =
                Files.exists(path) ? path.toRealPath() : path.toAbsolutePath().normalize();
        PartFiles.removeLeftovers(target.getParent());
        while (true) {
            Path part = PartFiles.fresh(target);
            FileChannel channel = open(part);
            if (locked(channel) && Files.exists(part)) {
                return new StagedFile(target, part, channel);
            }
            // Taken for a leftover between its beginning and its lock.
            channel.close();
            PartFiles.forget(part);
        }
    }

    private static FileChannel open(Path part) throws IOException {
        Set<StandardOpenOption> options = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        return FileChannel.open(part, options, FileRights.ofNew(part));
    }

    /** A drive without locks has leftovers that stay; nothing is lost by that. */
    private static boolean locked(FileChannel channel) {
        try {
            @Nullable FileLock lock = channel.tryLock();
            return lock != null;
        } catch (IOException | OverlappingFileLockException none) {
            return true;
        }
    }

    /**
     * Takes space on the disk before the content is known.
     *
     * @param bytes how much
     * @throws IOException if the disk has no room for it
     */
    public void reserve(long bytes) throws IOException {
        ByteBuffer zeros = ByteBuffer.allocate(BLOCK);
        for (long at = 0; at < bytes; at += BLOCK) {
            zeros.clear();
            write(zeros, at);
        }
        channel.force(true);
    }

    /**
     * Gives it its content, in the space that was taken.
     *
     * @throws IOException if the disk has no room for it
     */
    public void fill(byte[] content) throws IOException {
        write(ByteBuffer.wrap(content), 0);
        channel.truncate(content.length);
        channel.force(true);
    }

    /** Writes a content piece by piece, which may be larger than the memory. */
    @FunctionalInterface
    public interface Content {
        /** Writes all of it; the stream is left open. */
        void to(OutputStream out) throws IOException;
    }

    /**
     * Gives it its content as it comes.
     *
     * @throws IOException if the disk has no room for it, or the content cannot be made
     */
    public void fill(Content content) throws IOException {
        channel.position(0);
        // Not closed: that would close the file, which has yet to take its place.
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), BLOCK);
        content.to(out);
        out.flush();
        channel.truncate(channel.position());
        channel.force(true);
    }

    private void write(ByteBuffer bytes, long at) throws IOException {
        long to = at;
        while (bytes.hasRemaining()) {
            to += channel.write(bytes, to);
        }
    }

    /**
     * Puts it in its place; a file that is there is replaced and leaves it its rights.
     *
     * @throws IOException if it cannot be put there; what was there is unchanged
     */
    public void replace() throws IOException {
        replace(target);
    }

    /** The same in another place of its folder. */
    public void replace(Path place) throws IOException {
        keepRights(place);
        try {
            Files.move(part, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plain) {
            Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
        }
        placed = true;
        forceFolder();
    }

    /**
     * Puts it in its place if that is free: of two writers only one succeeds.
     *
     * @throws FileAlreadyExistsException if a file is there already; it is unchanged
     * @throws IOException if it cannot be put there
     */
    public void create() throws IOException {
        create(target);
    }

    /** The same in another place of its folder. */
    public void create(Path place) throws IOException {
        try {
            // A second name is given atomically, and not if the name is taken; a move might replace.
            Files.createLink(place, part);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (UnsupportedOperationException | FileSystemException noLinks) {
            // Drives without links, memory sticks for example.
            Files.move(part, place);
            placed = true;
        }
        forceFolder();
    }

    /**
     * Lets nobody write to it, whatever place it takes.
     *
     * @throws IOException if the drive knows no such right
     */
    public void protect() throws IOException {
        if (!part.toFile().setReadOnly()) {
            throw new IOException(target + ": cannot be made read-only");
        }
    }

    private void keepRights(Path place) throws IOException {
        PosixFileAttributeView to = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        if (to != null && Files.exists(place)) {
            to.setPermissions(Files.getPosixFilePermissions(place));
        }
    }

    /** The name itself outlives a power cut only if the folder is forced too; not every system can open a folder. */
    private void forceFolder() {
        Path folder = target.getParent();
        if (folder == null) {
            return;
        }
        try (FileChannel opened = FileChannel.open(folder, StandardOpenOption.READ)) {
            opened.force(true);
        } catch (IOException cannot) {
            return; // the content itself is safe
        }
    }

    /** Removes what did not take its place. Not after a move: by then the name may be another writer's. */
    @Override
    public void close() {
        try {
            if (!placed) {
                Files.deleteIfExists(part);
            }
            channel.close();
        } catch (IOException left) {
            return; // the next writer in this folder removes it
        } finally {
            PartFiles.forget(part);
        }
    }
}
