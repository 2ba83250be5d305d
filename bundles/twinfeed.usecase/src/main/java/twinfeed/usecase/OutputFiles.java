// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.StagedFiles;
import twinfeed.usecase.refusal.Refusals;

/**
 * Files made together: every one is complete in memory before the first touches the disk. They are made side by side, since a PDF takes longer
 * than the workbook beside it; what they are made of must bear that several threads read it.
 */
public final class OutputFiles {
    private final Map<Path, Wanted> wanted = new LinkedHashMap<>();

    /** Writes one file. */
    @FunctionalInterface
    public interface Writing {
        /** Writes all of it. */
        void to(OutputStream out) throws IOException;
    }

    /**
     * A file.
     *
     * @param out where to, as the person said
     */
    private record Wanted(Path out, Writing writing) {
        byte[] made() {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
            try {
                writing.to(bytes);
            } catch (IOException refused) {
                throw new UnusableException(out + ": " + refused.getMessage(), refused);
            }
            return bytes.toByteArray();
        }
    }

    /**
     * Adds a file, which is made when all are.
     *
     * @param out where to; absent for none
     * @throws UnusableException if another is to be written there
     */
    public OutputFiles add(@Nullable Path out, Writing writing) {
        if (out != null && wanted.putIfAbsent(out.toAbsolutePath().normalize(), new Wanted(out, writing)) != null) {
            throw new UnusableException(Refusals.ofFile(out, "out.twice").toString(), new IllegalArgumentException());
        }
        return this;
    }

    /** Makes them all, the first on this thread. */
    private Map<Path, byte[]> contents() {
        Map<Path, CompletableFuture<byte[]>> others = new LinkedHashMap<>();
        wanted.entrySet().stream()
                .skip(1)
                .forEach(each -> others.put(
                        each.getKey(),
                        CompletableFuture.supplyAsync(() -> each.getValue().made(), OutputFiles::aside)));
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        wanted.entrySet().stream()
                .limit(1)
                .forEach(each -> contents.put(each.getKey(), each.getValue().made()));
        others.forEach((file, made) -> contents.put(file, joined(made)));
        return contents;
    }

    private static void aside(Runnable task) {
        Thread thread = new Thread(task, "output files");
        thread.setDaemon(true);
        thread.start();
    }

    private static byte[] joined(CompletableFuture<byte[]> made) {
        try {
            return made.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (failed.getCause() instanceof Error cause) {
                throw cause;
            }
            throw failed;
        }
    }

    /**
     * Makes and writes them all.
     *
     * @throws UnusableException if one cannot be made
     * @throws twinfeed.model.io.InputException if one cannot be written
     */
    public void write() {
        AtomicFile.writeAll(contents());
    }

    /**
     * Makes them and takes room for them on the disk; they are not written.
     *
     * @throws UnusableException if one cannot be made
     * @throws twinfeed.model.io.InputException if one could not be written
     */
    public StagedFiles reserve() {
        Map<Path, byte[]> contents = contents();
        StagedFiles staged = StagedFiles.at(contents.keySet());
        try {
            staged.reserve(contents);
            return staged;
        } catch (RuntimeException full) {
            staged.close();
            throw full;
        }
    }

    /**
     * Makes them and writes them where room was taken.
     *
     * @throws UnusableException if one cannot be made
     * @throws twinfeed.model.io.InputException if one cannot be written
     */
    public void writeTo(StagedFiles staged) {
        staged.place(contents());
    }
}
