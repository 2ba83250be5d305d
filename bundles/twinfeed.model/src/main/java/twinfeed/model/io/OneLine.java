// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

/**
 * Text from files made harmless for a screen or a log: no character may move the cursor, colour the screen, begin a line that
 * nobody wrote, or turn the direction of reading.
 */
public final class OneLine {
    private OneLine() {}

    /** The text with a space for each character that could do so. */
    public static String of(String text) {
        StringBuilder out = new StringBuilder(text);
        for (int i = 0; i < out.length(); i++) {
            if (isUnsafe(out.charAt(i))) {
                out.setCharAt(i, ' ');
            }
        }
        return out.toString();
    }

    /**
     * The same, of a long text its beginning with an ellipsis.
     *
     * @param most most characters without the ellipsis, 1 or more
     */
    public static String of(String text, int most) {
        String line = of(text);
        return line.length() <= most ? line : line.substring(0, most) + "...";
    }

    /** Control characters, line and paragraph separators, and the marks, embeddings, overrides and isolates of direction. */
    static boolean isUnsafe(char c) {
        return Character.isISOControl(c)
                || c == '\u2028'
                || c == '\u2029'
                || c == '\u061c'
                || c == '\u200e'
                || c == '\u200f'
                || c >= '\u202a' && c <= '\u202e'
                || c >= '\u2066' && c <= '\u2069';
    }
}
