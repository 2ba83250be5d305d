// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** The bytes of a file that a person names: a regular one, of a size that fits the memory. */
public final class InputBytes {
    private InputBytes() {}

    /**
     * Refuses what is no file to read from: a folder, and devices and pipes, which may have no end or wait for ever.
     *
     * @throws InputException that says so
     */
    public static void check(Path path) {
        String name = path.toString();
        if (Files.isDirectory(path)) {
            throw Refusal.ofFile(name, "file.folder");
        }
        if (!Files.exists(path)) {
            throw Refusal.ofFile(name, "file.missing");
        }
        if (!Files.isRegularFile(path)) {
            throw Refusal.ofFile(name, "file.special");
        }
    }

    /**
     * Reads a file.
     *
     * @param mostMib the largest size in MiB
     * @throws InputException if it is missing, no regular file, too large, or cannot be read
     */
    public static byte[] read(Path path, int mostMib) {
        check(path);
        String name = path.toString();
        int most = mostMib << 20;
        try (InputStream stream = Files.newInputStream(path)) {
            byte[] content = stream.readNBytes(most + 1);
            if (content.length > most) {
                throw Refusal.ofFile(name, "file.large", String.valueOf(mostMib));
            }
            return content;
        } catch (IOException e) {
            throw Refusal.ofFile(e, name, "file.unreadable");
        }
    }
}
