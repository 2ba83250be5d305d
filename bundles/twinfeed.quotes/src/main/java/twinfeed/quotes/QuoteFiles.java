// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.StagedFile;

/** The two files of an issued quote, itself and its digest, for which room was taken before its number is known. */
final class QuoteFiles implements AutoCloseable {
    /** Beyond what the content needs with a short number. */
    private static final int SPARE = 4096;

    private final StagedFile content;
    private final StagedFile digest;

    private QuoteFiles(StagedFile content, StagedFile digest) {
        this.content = content;
        this.digest = digest;
    }

    /** Takes room in a folder, which is made if it is not there. */
    static QuoteFiles reserve(Path folder, int bytes) throws IOException {
        AtomicFile.makeFolder(folder);
        StagedFile content = StagedFile.at(folder.resolve("next.quote"));
        try {
            QuoteFiles files = new QuoteFiles(content, StagedFile.at(folder.resolve("next.quote.sha256")));
            try {
                content.reserve((long) bytes + SPARE);
                files.digest.reserve(SPARE);
                return files;
            } catch (IOException | RuntimeException full) {
                files.digest.close();
                throw full;
            }
        } catch (IOException | RuntimeException full) {
            content.close();
            throw full;
        }
    }

    static Path digestFile(Path file) {
        return file.resolveSibling(file.getFileName() + ".sha256");
    }

    /**
     * Puts a quote in its place. The digest first: a quote without a digest cannot be verified. A digest that is there already
     * was left behind by a program that stopped, or belongs to somebody who writes the same revision now: whoever creates the
     * quote then sets it.
     *
     * @throws FileAlreadyExistsException if that quote is there already
     * @throws IOException if it cannot be put there; no digest stays alone then
     */
    void place(Path file, FrozenQuote frozen) throws IOException {
        byte[] bytes = frozen.bytes();
        content.fill(bytes);
        digest.fill((FrozenQuote.digest(bytes) + "  " + file.getFileName() + "\n").getBytes(StandardCharsets.UTF_8));
        content.protect();
        digest.protect();
        if (Files.exists(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        boolean first = create(digestFile(file));
        try {
            content.create(file);
        } catch (IOException failed) {
            if (first && !Files.exists(file)) {
                Files.deleteIfExists(digestFile(file));
            }
            throw failed;
        }
        if (!first) {
            digest.replace(digestFile(file));
        }
    }

    private boolean create(Path file) throws IOException {
        try {
            digest.create(file);
            return true;
        } catch (FileAlreadyExistsException there) {
            return false;
        }
    }

    @Override
    public void close() {
        content.close();
        digest.close();
    }
}
