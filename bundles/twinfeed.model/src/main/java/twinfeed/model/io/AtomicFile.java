// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Writes a file so that it is there whole or not at all, even if the machine stops: a second file in the same folder,
 * forced to the disk, then moved over the first. A link is followed, and the rights of a file that was there are kept.
 */
public final class AtomicFile {
    private static final int MOST_NAMES = 100;

    private AtomicFile() {}

    /**
     * Writes a file.
     *
     * @throws InputException if it cannot be written
     */
    public static void write(Path path, byte[] content) {
        writeAll(Map.of(path, content));
    }

    /**
     * Writes several files. None takes its place before all of them lie complete beside theirs.
     *
     * @param contents what to write where
     * @throws InputException if one cannot be written
     */
    public static void writeAll(Map<Path, byte[]> contents) {
        List<Staged> staged = new ArrayList<>();
        try {
            contents.forEach((path, content) -> staged.add(stage(path, content)));
            staged.forEach(AtomicFile::place);
        } finally {
            staged.forEach(Staged::discard);
        }
    }

    /** A file that lies complete beside its place. */
    private static final class Staged {
        private final Path path;
        private final Path target;
        private final Path fresh;
        private boolean placed;

        Staged(Path path, Path target, Path fresh) {
            this.path = path;
            this.target = target;
            this.fresh = fresh;
        }

        /** Not after a move: by then the name may be another writer's. */
        void discard() {
            try {
                if (!placed) {
                    Files.deleteIfExists(fresh);
                }
            } catch (IOException left) {
                return; // the name says what it is, and the next write passes it over
            }
        }
    }

    private static Staged stage(Path path, byte[] content) {
        String name = path.toString();
        if (Files.isDirectory(path)) {
            throw Refusal.ofFile(name, "save.folder");
        }
        if (Files.exists(path) && !Files.isWritable(path)) {
            throw Refusal.ofFile(name, "save.protected");
        }
        try {
            Path target = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
            Staged staged = new Staged(path, target, freshFile(target));
            try {
                fill(staged.fresh, content);
                keepRights(target, staged.fresh);
                return staged;
            } catch (IOException | RuntimeException failed) {
                staged.discard();
                throw failed;
            }
        } catch (IOException e) {
            throw Refusal.ofFile(e, name, "save.failed", reason(e));
        }
    }

    private static void place(Staged staged) {
        try {
            move(staged.fresh, staged.target);
            staged.placed = true;
            forceFolder(staged.target);
        } catch (IOException e) {
            throw Refusal.ofFile(e, staged.path.toString(), "save.failed", reason(e));
        }
    }

    /** Created by us and nobody else; a name left behind by a program that was stopped is passed over. */
    private static Path freshFile(Path target) throws IOException {
        for (int i = 0; i < MOST_NAMES; i++) {
            try {
                return Files.createFile(target.resolveSibling("." + target.getFileName() + "." + i + ".part"));
            } catch (FileAlreadyExistsException taken) {
                continue;
            }
        }
        throw new FileAlreadyExistsException(target + ".*.part");
    }

    private static void fill(Path fresh, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private static void keepRights(Path target, Path fresh) throws IOException {
        PosixFileAttributeView to = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (to != null && Files.exists(target)) {
            to.setPermissions(Files.getPosixFilePermissions(target));
        }
    }

    private static void move(Path fresh, Path target) throws IOException {
        try {
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plain) {
            Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** The move itself outlives a power cut only if the folder is forced too; not every system can open a folder. */
    private static void forceFolder(Path target) {
        Path folder = target.getParent();
        if (folder == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException cannot) {
            return; // the content itself is safe
        }
    }

    private static String reason(IOException e) {
        return e instanceof NoSuchFileException ? Refusal.text("save.noFolder") : String.valueOf(e.getMessage());
    }
}
