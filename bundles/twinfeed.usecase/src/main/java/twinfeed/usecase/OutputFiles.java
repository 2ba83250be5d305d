// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.StagedFiles;
import twinfeed.usecase.refusal.Refusals;

/** Files made together: every one is complete in memory before the first touches the disk. */
public final class OutputFiles {
    private final Map<Path, byte[]> contents = new LinkedHashMap<>();

    /** Writes one file. */
    @FunctionalInterface
    public interface Writing {
        /** Writes all of it. */
        void to(OutputStream out) throws IOException;
    }

    /**
     * Makes a file.
     *
     * @param out where to; absent for none
     * @throws UnusableException if it cannot be made
     */
    public OutputFiles add(@Nullable Path out, Writing writing) {
        if (out == null) {
            return this;
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
        try {
            writing.to(bytes);
        } catch (IOException refused) {
            throw new UnusableException(out + ": " + refused.getMessage(), refused);
        }
        if (contents.put(out.toAbsolutePath().normalize(), bytes.toByteArray()) != null) {
            throw new UnusableException(Refusals.ofFile(out, "out.twice").toString(), new IllegalArgumentException());
        }
        return this;
    }

    /**
     * Writes them all.
     *
     * @throws twinfeed.model.io.InputException if one cannot be written
     */
    public void write() {
        AtomicFile.writeAll(contents);
    }

    /**
     * Takes room for them on the disk; they are not written.
     *
     * @throws twinfeed.model.io.InputException if one could not be written
     */
    public StagedFiles reserve() {
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
     * Writes them where room was taken.
     *
     * @throws twinfeed.model.io.InputException if one cannot be written
     */
    public void writeTo(StagedFiles staged) {
        staged.place(contents);
    }
}
