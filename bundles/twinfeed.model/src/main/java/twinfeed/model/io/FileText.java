// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** The text of a file, read with a limit and decoded strictly: a byte that is no UTF-8 is never replaced in silence. */
final class FileText {
    /** Longest file that is read: 16 MiB, more than a thousand times a large job. */
    static final int MOST_MIB = 16;

    static final int MOST_BYTES = MOST_MIB << 20;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private FileText() {}

    static byte[] read(Path path) {
        return InputBytes.read(path, MOST_MIB);
    }

    static String decode(String name, byte[] content) {
        if (content.length > MOST_BYTES) {
            throw Refusal.ofFile(name, "file.large", String.valueOf(MOST_MIB));
        }
        ByteBuffer in = ByteBuffer.wrap(content);
        CharBuffer out = CharBuffer.allocate(content.length);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            throw Refusal.atLine(name, lineOf(content, in.position()), "file.encoding");
        }
        String text = withoutMark(out.flip().toString());
        if (text.isBlank()) {
            throw Refusal.ofFile(name, "file.empty");
        }
        return text;
    }

    private static String withoutMark(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static int lineOf(byte[] content, int end) {
        int line = 1;
        for (int i = 0; i < end; i++) {
            if (content[i] == '\n') {
                line++;
            }
        }
        return line;
    }
}
