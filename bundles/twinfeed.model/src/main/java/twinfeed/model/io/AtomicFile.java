// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Writes a file so that it is there whole or not at all, even if the machine stops: a second file in the same folder,
 * forced to the disk, then moved over the first. A link is followed, and the rights of a file that was there are kept.
 */
public final class AtomicFile {
    private AtomicFile() {}

    /**
     * Writes a file.
     *
     * @throws InputException if it cannot be written, is write-protected, or is no regular file
     */
    public static void write(Path path, byte[] content) {
        writeAll(Map.of(path, content));
    }

    /**
     * Writes a file whose content may be larger than the memory.
     *
     * @throws InputException if it cannot be written, is write-protected, or is no regular file, or its content cannot be made
     */
    public static void write(Path path, StagedFile.Content content) {
        checkPlace(path);
        try (StagedFile file = StagedFile.at(path)) {
            file.fill(content);
            file.replace();
        } catch (IOException e) {
            throw failed(path, e);
        }
    }

    /**
     * Writes several files. None takes its place before all of them lie complete beside theirs.
     *
     * @param contents what to write where
     * @throws InputException if one cannot be written, is write-protected, or is no regular file
     */
    public static void writeAll(Map<Path, byte[]> contents) {
        try (StagedFiles files = StagedFiles.at(contents.keySet())) {
            files.place(contents);
        }
    }

    /**
     * Writes a file that must not be there yet: whole or not at all, and only one of two writers succeeds. Folders that are not
     * there are made.
     *
     * @throws FileAlreadyExistsException if it is there already; it is left as it is
     * @throws IOException if it cannot be written
     */
    public static void create(Path path, byte[] content) throws IOException {
        makeFolder(Objects.requireNonNull(path.toAbsolutePath().getParent(), "a file has a folder"));
        try (StagedFile staged = StagedFile.at(path)) {
            staged.fill(content);
            staged.create();
        }
    }

    /**
     * Makes an empty file that must not be there yet: of two programs only one succeeds.
     *
     * @throws FileAlreadyExistsException if it is there already
     * @throws IOException if it cannot be made
     */
    public static void claim(Path path) throws IOException {
        Files.createFile(path, FileRights.ofNew(path));
    }

    /**
     * Makes a folder and those above it, where they are not there.
     *
     * @throws IOException if one cannot be made
     */
    public static void makeFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder, FileRights.ofNewFolder(folder));
        }
    }

    /**
     * Opens a file of the program's own, to be read and written in place; it is made where there is none, for its owner and group.
     *
     * @throws IOException if it can be neither opened nor made
     */
    public static FileChannel openOwn(Path path) throws IOException {
        return FileChannel.open(
                path,
                Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE),
                FileRights.ofNew(path));
    }

    /**
     * Refuses a place at which nothing may be written: a folder, a device or a pipe, a write-protected file.
     *
     * @throws InputException that says so
     */
    public static void checkPlace(Path path) {
        String name = path.toString();
        if (Files.isDirectory(path)) {
            throw Refusal.ofFile(name, "save.folder");
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw Refusal.ofFile(name, "save.special");
        }
        try {
            if (Files.exists(path) && FileRights.readOnly(path)) {
                throw Refusal.ofFile(name, "save.protected");
            }
        } catch (IOException e) {
            throw failed(path, e);
        }
    }

    /**
     * Refuses a place in a folder that is not there, in the words with which writing there would fail.
     *
     * @throws InputException that says so
     */
    public static void checkFolder(Path path) {
        Path folder = path.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw failed(path, new NoSuchFileException(path.toString()));
        }
    }

    static InputException failed(Path path, IOException e) {
        String reason = e instanceof NoSuchFileException
                ? Refusal.text("save.noFolder")
                : String.valueOf(e.getMessage()).replaceFirst("^.*\\.part: ", "");
        return Refusal.ofFile(e, path.toString(), "save.failed", reason);
    }
}
