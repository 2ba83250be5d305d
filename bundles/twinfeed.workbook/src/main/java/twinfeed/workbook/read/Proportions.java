// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.read;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import twinfeed.workbook.text.WorkbookException;

/** Measures a file before it is unpacked: a few kilobytes can hold terabytes of zeros. */
final class Proportions {
    private static final long LARGEST_FILE = 64L << 20;
    private static final long LARGEST_CONTENT = 256L << 20;

    /** Parts other than sheets are held in memory while a sheet is read. */
    private static final long LARGEST_OTHER_PART = 64L << 20;

    private static final int MOST_PARTS = 5000;

    /** First bytes of the older, binary format, which also wraps books that are protected by a password. */
    private static final int OLDER = 0xD0CF11E0;

    private static final int ZIP = 0x504B0304;

    private Proportions() {}

    static void check(Path file) throws IOException {
        Map<String, String> values = Map.of("file", String.valueOf(file.getFileName()));
        if (!Files.isRegularFile(file)) {
            throw new NoSuchFileException(file.toString());
        }
        if (Files.size(file) > LARGEST_FILE) {
            throw new WorkbookException("tooLarge", values);
        }
        int head = head(file);
        if (head != ZIP) {
            throw new WorkbookException(head == OLDER ? "olderFormat" : "noWorkbook", values);
        }
        try (ZipInputStream zip = new ZipInputStream(new BufferedInputStream(Files.newInputStream(file), 1 << 16))) {
            if (!measured(zip)) {
                throw new WorkbookException("outOfProportion", values);
            }
        } catch (ZipException | IllegalArgumentException | java.io.EOFException damaged) {
            throw new WorkbookException("damaged", values, damaged);
        }
    }

    private static int head(Path file) throws IOException {
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] head = stream.readNBytes(4);
            return head.length < 4 ? 0 : java.nio.ByteBuffer.wrap(head).getInt();
        }
    }

    /** Whether the unpacked content stays within bounds; the sizes that the file states about itself are not believed. */
    private static boolean measured(ZipInputStream zip) throws IOException {
        byte[] buffer = new byte[1 << 16];
        long total = 0;
        int parts = 0;
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            boolean sheet = entry.getName().startsWith("xl/worksheets/");
            long left = Math.min(LARGEST_CONTENT - total, sheet ? LARGEST_CONTENT : LARGEST_OTHER_PART);
            long size = size(zip, buffer, left);
            total += size;
            if (size > left || ++parts > MOST_PARTS) {
                return false;
            }
        }
        return true;
    }

    private static long size(ZipInputStream zip, byte[] buffer, long most) throws IOException {
        long size = 0;
        for (int read = zip.read(buffer); read >= 0 && size <= most; read = zip.read(buffer)) {
            size += read;
        }
        return size;
    }
}
