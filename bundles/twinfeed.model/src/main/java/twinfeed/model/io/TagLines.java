// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the line of an attribute. The parser tells only where a start tag ends, which may be some lines below the attribute
 * that is to blame.
 */
final class TagLines {
    private static final Pattern ATTRIBUTE = Pattern.compile("([^\\s=<]+)\\s*=\\s*(?:\"[^\"]*\"|'[^']*')");

    private final String text;

    TagLines(String text) {
        this.text = text;
    }

    /** The line on which a piece of text first stands; the first if it is not there. */
    int ofText(String piece) {
        return 1 + breaks(0, Math.max(0, text.indexOf(piece)));
    }

    /** The line of the tag that ends at a line and column, both from 1. */
    int ofTag(int endLine, int endColumn) {
        return endLine - breaks(start(endLine, endColumn), offset(endLine, endColumn));
    }

    /** The line of an attribute in the tag that ends at a line and column; the tag's own if it is not found. */
    int ofAttribute(int endLine, int endColumn, String attribute) {
        int end = offset(endLine, endColumn);
        int start = start(endLine, endColumn);
        Matcher matcher = ATTRIBUTE.matcher(text).region(start, end);
        while (matcher.find()) {
            if (matcher.group(1).equals(attribute)) {
                return endLine - breaks(matcher.start(), end);
            }
        }
        return endLine - breaks(start, end);
    }

    /** No attribute value holds a "<", so the last one before the end opens the tag. */
    private int start(int endLine, int endColumn) {
        return Math.max(0, text.lastIndexOf('<', offset(endLine, endColumn) - 1));
    }

    private int offset(int line, int column) {
        int at = 0;
        for (int i = 1; i < line && at < text.length(); i++) {
            at = afterBreak(at);
        }
        return Math.min(text.length(), at + Math.max(0, column - 1));
    }

    private int afterBreak(int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        boolean pair = text.startsWith("\r\n", at);
        return at + (pair ? 2 : 1);
    }

    private int breaks(int from, int to) {
        int count = 0;
        for (int at = from; at < to; at++) {
            char c = text.charAt(at);
            if (c == '\n' || (c == '\r' && !text.startsWith("\r\n", at))) {
                count++;
            }
        }
        return count;
    }
}
