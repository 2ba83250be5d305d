// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/** Files that are made ready together: none takes its place before all of them lie complete beside theirs. */
public final class StagedFiles implements AutoCloseable {
    /** Beyond what a first version of a content needs: the final one bears a longer number, for example. */
    private static final int SPARE = 1 << 16;

    private final Map<Path, StagedFile> files = new LinkedHashMap<>();

    private StagedFiles() {}

    /**
     * Begins files.
     *
     * @throws InputException if one cannot be written, is write-protected, or is no regular file
     */
    public static StagedFiles at(Collection<Path> paths) {
        paths.forEach(AtomicFile::checkPlace);
        StagedFiles staged = new StagedFiles();
        for (Path path : paths) {
            try {
                staged.files.put(path, StagedFile.at(path));
            } catch (IOException e) {
                staged.close();
                throw AtomicFile.failed(path, e);
            }
        }
        return staged;
    }

    /**
     * Takes space on the disk for contents of about these sizes.
     *
     * @throws InputException if there is none
     */
    public void reserve(Map<Path, byte[]> first) {
        for (Map.Entry<Path, StagedFile> one : files.entrySet()) {
            try {
                one.getValue().reserve((long) first.getOrDefault(one.getKey(), new byte[0]).length + SPARE);
            } catch (IOException e) {
                throw AtomicFile.failed(one.getKey(), e);
            }
        }
    }

    /**
     * Gives all of them their contents, then their places.
     *
     * @throws InputException if one cannot be written
     */
    public void place(Map<Path, byte[]> contents) {
        for (Map.Entry<Path, StagedFile> one : files.entrySet()) {
            try {
                one.getValue().fill(contents.getOrDefault(one.getKey(), new byte[0]));
            } catch (IOException e) {
                throw AtomicFile.failed(one.getKey(), e);
            }
        }
        for (Map.Entry<Path, StagedFile> one : files.entrySet()) {
            try {
                one.getValue().replace();
            } catch (IOException e) {
                throw AtomicFile.failed(one.getKey(), e);
            }
        }
    }

    @Override
    public void close() {
        files.values().forEach(StagedFile::close);
    }
}
