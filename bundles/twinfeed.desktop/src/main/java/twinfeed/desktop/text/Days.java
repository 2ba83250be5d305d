// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.text;

import java.time.LocalDate;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.FormatStyle;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Days as a person reads and types them. */
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

    /**
     * The day that was typed: with the month as a word or as a number in the order of the person's region, zeros before a figure or not, the
     * year with two digits or four (6 Oct 2026, 6 October 2026, 6/10/2026, 06/10/26), or as 2026-10-06.
     *
     * @return empty where it is no day of the calendar
     */
    public static Optional<LocalDate> typed(String text, Locale locale) {
        String plain = text.strip().replace('\u00a0', ' ').replace('\u202f', ' ');
        for (DateTimeFormatter form : forms(locale)) {
            try {
                return Optional.of(LocalDate.parse(plain, form));
            } catch (DateTimeParseException other) {
                // the next form
            }
        }
        return Optional.empty();
    }

    private static List<DateTimeFormatter> forms(Locale locale) {
        List<DateTimeFormatter> forms = new ArrayList<>();
        forms.add(DateTimeFormatter.ISO_LOCAL_DATE);
        for (FormatStyle style : List.of(FormatStyle.MEDIUM, FormatStyle.LONG, FormatStyle.SHORT)) {
            String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                            style, null, IsoChronology.INSTANCE, locale)
                    .replaceAll("d+", "d")
                    .replaceAll("(?<!M)MM(?!M)", "M");
            for (String year : List.of("uuuu", "uu")) {
                forms.add(form(pattern.replaceAll("y+", year), locale));
                if (locale.getLanguage().equals("en")) {
                    // British English shortens September to Sept; everybody types Sep.
                    forms.add(form(pattern.replaceAll("y+", year), Locale.ENGLISH));
                }
            }
        }
        return forms;
    }

    private static DateTimeFormatter form(String pattern, Locale locale) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(pattern)
                .toFormatter(locale)
                .withResolverStyle(ResolverStyle.STRICT);
    }
}
