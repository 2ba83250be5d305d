// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

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
 * @param digest SHA-256 of the content, 64 hexadecimal digits; empty if there was no file
 */
public record FileFingerprint(String digest) {
    /** Of a file that is not there. */
    public static final FileFingerprint NONE = new FileFingerprint("");

    /** Of a content. */
    public static FileFingerprint of(byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return new FileFingerprint(HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    /** Of what a file holds now; a file that cannot be read counts as another content. */
    public static FileFingerprint of(Path file) {
        try {
            return of(Files.readAllBytes(file));
        } catch (NoSuchFileException none) {
            return NONE;
        } catch (IOException unreadable) {
            return new FileFingerprint("unreadable");
        }
    }

    /** Whether there was a file. */
    public boolean there() {
        return !digest.isEmpty();
    }
}
