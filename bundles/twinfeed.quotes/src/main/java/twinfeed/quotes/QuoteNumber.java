// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number of a quote.
 *
 * @param year year, 1000 to 9999
 * @param count count in that year, from 1
 */
public record QuoteNumber(int year, int count) implements Comparable<QuoteNumber> {
    private static final Pattern FORM = Pattern.compile("(\\d{4})-(\\d{4,9})");

    /** @throws IllegalArgumentException if one is out of range */
    public QuoteNumber {
        if (year < 1000 || year > 9999 || count < 1) {
            throw new IllegalArgumentException("no quote number: year " + year + ", count " + count);
        }
    }

    /**
     * Reads a number as it is printed.
     *
     * @throws LifeException if it is none
     */
    public static QuoteNumber parse(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()
                || Integer.parseInt(form.group(2)) < 1
                || form.group(1).startsWith("0")) {
            throw new LifeException("notANumber", text);
        }
        return new QuoteNumber(Integer.parseInt(form.group(1)), Integer.parseInt(form.group(2)));
    }

    @Override
    public int compareTo(QuoteNumber other) {
        return year == other.year ? Integer.compare(count, other.count) : Integer.compare(year, other.year);
    }

    /** As it is printed: {@code 2026-0042}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%d-%04d", year, count);
    }
}
