// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.text;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import org.jspecify.annotations.Nullable;

/** Days as a person reads them. */
public final class Days {
    private Days() {}

    /** A day in the order of the person's language; empty if there is none. */
    public static String of(@Nullable LocalDate day, Words words) {
        return day == null
                ? ""
                : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                        .withLocale(words.locale())
                        .format(day);
    }
}
