// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a file held when it was looked at. The content is compared, not the time of change: copying tools and some network
 * disks keep old times.
 *
 * @param content digest of the content; empty if there was no file
 */
public record FileMark(String content) {
    /** What the file holds now; a file that cannot be read counts as another content. */
    public static FileMark of(Path file) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
            return new FileMark(HexFormat.of().formatHex(digest));
        } catch (NoSuchFileException none) {
            return new FileMark("");
        } catch (IOException unreadable) {
            return new FileMark("unreadable");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** Whether there was a file. */
    public boolean there() {
        return !content.isEmpty();
    }
}
