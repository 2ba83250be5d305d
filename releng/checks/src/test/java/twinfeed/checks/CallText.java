// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

/** The text of a call in a source file. */
final class CallText {
    private CallText() {}

    /** What stands from a place within a call's brackets to the bracket that ends it. */
    static String inside(String text, int from) {
        int depth = 1;
        for (int at = from; at < text.length(); at++) {
            char c = text.charAt(at);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (depth == 0) {
                return text.substring(from, at);
            }
        }
        return text.substring(from);
    }
}
