// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who may read what is written: jobs and quotes hold customers' data. New files are for their owner, and to be read by the
 * group; the system's own mask and a folder's default access list narrow or widen that. Windows keeps the folder's rights.
 */
final class FileRights {
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-r-----");
    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwxrwx---");

    private FileRights() {}

    /** For a file that is made there. */
    static FileAttribute<?>[] ofNew(Path file) {
        return attributes(file, FILE);
    }

    /** For a folder that is made there. */
    static FileAttribute<?>[] ofNewFolder(Path folder) {
        return attributes(folder, FOLDER);
    }

    private static FileAttribute<?>[] attributes(Path path, Set<PosixFilePermission> rights) {
        return posix(path)
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(rights)}
                : new FileAttribute<?>[0];
    }

    private static boolean posix(Path path) {
        @Nullable Path there = path.toAbsolutePath();
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        try {
            FileStore store = Files.getFileStore(there == null ? Path.of(".") : there);
            return store.supportsFileAttributeView(PosixFileAttributeView.class);
        } catch (IOException unknown) {
            return false;
        }
    }

    /** Whether its owner has said that it is not to be written: also for an administrator, who could all the same. */
    static boolean readOnly(Path file) throws IOException {
        @Nullable PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        boolean locked = view != null && !view.readAttributes().permissions().contains(PosixFilePermission.OWNER_WRITE);
        return locked || !Files.isWritable(file);
    }
}
