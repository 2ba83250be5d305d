// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** The texts of a book, each written once (ECMA-376 part 1, 18.4.9); cells refer to them by number. */
final class SharedStrings {
    private final Map<String, Integer> indices = new LinkedHashMap<>();
    private int uses;

    /** The number of a text, from 0. */
    int index(String text) {
        uses++;
        return indices.computeIfAbsent(text, added -> indices.size());
    }

    /** The part of the package. */
    byte[] part() {
        StringBuilder out = new StringBuilder(256 + indices.size() * 64);
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                .append("<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" count=\"")
                .append(uses)
                .append("\" uniqueCount=\"")
                .append(indices.size())
                .append("\">");
        for (String text : indices.keySet()) {
            boolean kept = text.strip().length() == text.length();
            out.append(kept ? "<si><t>" : "<si><t xml:space=\"preserve\">")
                    .append(XmlText.of(text))
                    .append("</t></si>");
        }
        return out.append("</sst>").toString().getBytes(StandardCharsets.UTF_8);
    }
}
