// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The street of an address, by which visits are grouped: its line with a house number, without the number, and the place that follows. */
final class Street {
    private static final String NUMBER = "\\d+\\s?[a-zA-Z]?(?:\\s?[-/\u2013]\\s?\\d+\\s?[a-zA-Z]?)?";

    /** A number before the name (12a Rowan Lane) or behind it (Lindenweg 12a). */
    private static final Pattern HOUSE =
            Pattern.compile("(?:" + NUMBER + "\\s+(?<behind>\\p{L}.*)|(?<before>\\p{L}.*?)\\s+" + NUMBER + ")");

    /** A part of a house is no street: Flat 3, Wohnung 4. */
    private static final Pattern PART = Pattern.compile(
            "(?i)(?:flat|apartment|apt|unit|room|floor|wohnung|whg|stock|zimmer)\\b.*|.*\\b(?:floor|stock|og)");

    private Street() {}

    /**
     * The street.
     *
     * @param address lines separated by semicolons or commas
     * @return street and place; empty if no line has a house number
     */
    static String of(String address) {
        List<String> lines = Arrays.stream(address.split("[;,\\n]"))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
        for (int at = 0; at < lines.size(); at++) {
            Matcher house = HOUSE.matcher(lines.get(at));
            if (!PART.matcher(lines.get(at)).matches() && house.matches()) {
                String name = house.group("behind") == null ? house.group("before") : house.group("behind");
                return at + 1 < lines.size() ? name + ", " + lines.get(at + 1) : name;
            }
        }
        return "";
    }
}
