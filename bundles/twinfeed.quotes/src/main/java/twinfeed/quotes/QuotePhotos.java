// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.InputBytes;
import twinfeed.model.io.StagedFile;

/**
 * The photographs of an office's issued quotes: {@code photos/SHA-256}, read-only, each picture once whatever it is called. A quote
 * freezes the digests, so that it can be printed again with the pictures that were issued, and with no others.
 */
public final class QuotePhotos {
    private static final int MOST_MIB = 64;

    private final Path folder;

    /**
     * Those of an office.
     *
     * @param office its folder; created when it is first written to
     */
    public QuotePhotos(Path office) {
        folder = office.resolve("photos");
    }

    /**
     * Keeps copies; what is kept already stays as it is.
     *
     * @param files the pictures by the name that the survey has for them
     * @return their digests by that name
     * @throws twinfeed.model.io.InputException if a picture cannot be read
     * @throws IOException if one cannot be kept
     */
    SortedMap<String, String> keep(Map<String, Path> files) throws IOException {
        SortedMap<String, String> digests = new TreeMap<>();
        for (Map.Entry<String, Path> one : files.entrySet()) {
            byte[] content = InputBytes.read(one.getValue(), MOST_MIB);
            String digest = FrozenQuote.digest(content);
            if (!sound(digest)) {
                create(folder.resolve(digest), content);
            }
            digests.put(one.getKey(), digest);
        }
        return digests;
    }

    private void create(Path file, byte[] content) throws IOException {
        AtomicFile.makeFolder(folder);
        try (StagedFile staged = StagedFile.at(file)) {
            staged.fill(content);
            staged.protect();
            staged.create();
        } catch (FileAlreadyExistsException there) {
            // Somebody issues a quote with the same picture now. A damaged one stays: its own quotes have to tell.
        }
    }

    /** Whether a picture is there, and is the one that was kept. */
    boolean sound(String digest) {
        try (InputStream picture = open(digest)) {
            return picture != null;
        } catch (IOException | RuntimeException damaged) {
            return false;
        }
    }

    /**
     * Opens a picture.
     *
     * @param digest its digest
     * @return the picture, which the caller closes; null if it is not there
     * @throws IOException if it is not the one that was kept
     */
    public @Nullable InputStream open(String digest) throws IOException {
        Path file = folder.resolve(digest);
        if (!Files.isRegularFile(file)) {
            return null;
        }
        byte[] content = InputBytes.read(file, MOST_MIB);
        if (!FrozenQuote.digest(content).equals(digest)) {
            throw new IOException(LifeException.MESSAGES.toReader("photo.changed"));
        }
        return new ByteArrayInputStream(content);
    }
}
