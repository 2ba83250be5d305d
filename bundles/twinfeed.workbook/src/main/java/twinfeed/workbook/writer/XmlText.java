// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

/**
 * Text as the XML of a sheet has it. What XML cannot carry is written as {@code _xHHHH_} (ECMA-376 part 1, 22.9.2.19), and a text that
 * looks like such an escape by itself is escaped, so that every text comes back as it was.
 */
final class XmlText {
    private XmlText() {}

    static String of(String text) {
        int plain = 0;
        while (plain < text.length() && isPlain(text.charAt(plain))) {
            plain++;
        }
        if (plain == text.length()) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length() + 16).append(text, 0, plain);
        for (int at = plain; at < text.length(); at++) {
            at += put(text, at, out);
        }
        return out.toString();
    }

    private static boolean isPlain(char letter) {
        return letter >= ' ' && letter != '<' && letter != '>' && letter != '&' && letter != '_' && letter < 0xD800;
    }

    /** Puts the letter at a place; returns how many more letters it has used. */
    private static int put(String text, int at, StringBuilder out) {
        char letter = text.charAt(at);
        if (Character.isHighSurrogate(letter)
                && at + 1 < text.length()
                && Character.isLowSurrogate(text.charAt(at + 1))) {
            out.append(letter).append(text.charAt(at + 1));
            return 1;
        }
        switch (letter) {
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            case '&' -> out.append("&amp;");
            case '_' -> out.append(looksEscaped(text, at) ? "_x005F_" : "_");
            case '\n', '\t' -> out.append(letter);
            default -> other(letter, out);
        }
        return 0;
    }

    private static void other(char letter, StringBuilder out) {
        if (letter < ' ' || Character.isSurrogate(letter) || letter >= 0xFFFE) {
            out.append("_x")
                    .append(String.format(java.util.Locale.ROOT, "%04X", (int) letter))
                    .append('_');
        } else {
            out.append(letter);
        }
    }

    private static boolean looksEscaped(String text, int at) {
        if (at + 6 >= text.length() || text.charAt(at + 1) != 'x' || text.charAt(at + 6) != '_') {
            return false;
        }
        for (int digit = at + 2; digit < at + 6; digit++) {
            if (Character.digit(text.charAt(digit), 16) < 0) {
                return false;
            }
        }
        return true;
    }
}
