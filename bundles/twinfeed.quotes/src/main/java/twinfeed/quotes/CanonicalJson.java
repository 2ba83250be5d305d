// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Writes JSON in the one form that RFC 8785 allows: keys sorted by UTF-16 code units, no spaces, numbers as ECMAScript prints
 * them, only what must be escaped escaped.
 */
public final class CanonicalJson {
    private final StringBuilder out = new StringBuilder();

    private CanonicalJson() {}

    /**
     * The text of a value.
     *
     * @param value a map with text keys, a list, text, a number, a boolean or null
     * @throws IllegalArgumentException if a number is not finite, a text has half a surrogate pair, or the value is none of these
     */
    public static String write(@Nullable Object value) {
        CanonicalJson json = new CanonicalJson();
        json.value(value);
        return json.out.toString();
    }

    private void value(@Nullable Object value) {
        if (value == null || value instanceof Boolean) {
            out.append(value);
        } else if (value instanceof String text) {
            text(text);
        } else if (value instanceof Number number) {
            out.append(EcmaNumber.text(number.doubleValue()));
        } else if (value instanceof List<?> list) {
            list(list);
        } else if (value instanceof Map<?, ?> map) {
            map(map);
        } else {
            throw new IllegalArgumentException(value.getClass() + " has no form in JSON");
        }
    }

    private void list(List<?> list) {
        String comma = "[";
        for (Object element : list) {
            out.append(comma);
            value(element);
            comma = ",";
        }
        out.append(list.isEmpty() ? "[]" : "]");
    }

    private void map(Map<?, ?> map) {
        // The natural order of strings is that of their UTF-16 code units, as the RFC asks.
        Map<String, @Nullable Object> sorted = new TreeMap<>();
        map.forEach((key, element) -> sorted.put((String) key, element));
        String comma = "{";
        for (Map.Entry<String, @Nullable Object> entry : sorted.entrySet()) {
            out.append(comma);
            text(entry.getKey());
            out.append(':');
            value(entry.getValue());
            comma = ",";
        }
        out.append(sorted.isEmpty() ? "{}" : "}");
    }

    private void text(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char one = text.charAt(i);
            if (Character.isSurrogate(one)) {
                i += surrogates(text, i);
            } else {
                character(one);
            }
        }
        out.append('"');
    }

    /** Writes a pair; the number of further characters taken. */
    private int surrogates(String text, int at) {
        boolean pair = at + 1 < text.length() && Character.isSurrogatePair(text.charAt(at), text.charAt(at + 1));
        if (!pair) {
            throw new IllegalArgumentException("half a surrogate pair at " + at + " of a text");
        }
        out.append(text, at, at + 2);
        return 1;
    }

    private void character(char one) {
        switch (one) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\b' -> out.append("\\b");
            case '\t' -> out.append("\\t");
            case '\n' -> out.append("\\n");
            case '\f' -> out.append("\\f");
            case '\r' -> out.append("\\r");
            default -> {
                if (one < ' ') {
                    out.append("\\u00")
                            .append(Character.forDigit(one >> 4, 16))
                            .append(Character.forDigit(one & 15, 16));
                } else {
                    out.append(one);
                }
            }
        }
    }
}
