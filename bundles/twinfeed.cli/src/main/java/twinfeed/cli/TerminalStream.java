// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.OneLine;

/**
 * A stream for people to read, on a screen or in a log. Names, notes and prices come from files that anybody may have written: what
 * could move the cursor, colour the screen or turn the direction of reading is left out, and a line that a text begins by itself is
 * set in, so that it is not taken for one of the program. What is written as bytes, a JSON document for example, goes as it is.
 */
final class TerminalStream extends PrintStream {
    private static final String CONTINUED = System.lineSeparator() + "  ";

    TerminalStream(OutputStream out) {
        super(out, false, StandardCharsets.UTF_8);
    }

    @Override
    public void print(@Nullable String text) {
        super.print(clean(String.valueOf(text)));
    }

    @Override
    public void print(@Nullable Object value) {
        print(String.valueOf(value));
    }

    static String clean(String text) {
        StringBuilder out = new StringBuilder();
        for (String line : text.split("\r\n|[\n\r]", -1)) {
            out.append(out.isEmpty() ? "" : CONTINUED).append(OneLine.of(line));
        }
        return out.toString();
    }
}
