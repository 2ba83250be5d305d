// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.isolation;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Optional;
import java.util.function.Supplier;

/** When a step was done, as it is written into a job: a time of a calendar, not just any text. */
public final class IsolationTime {
    private static final DateTimeFormatter DAY_AND_TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm[:ss]").withResolverStyle(ResolverStyle.STRICT);
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("uuuu-MM-dd").withResolverStyle(ResolverStyle.STRICT);
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("HH:mm[:ss]").withResolverStyle(ResolverStyle.STRICT);

    private IsolationTime() {}

    /** Whether a text is a time: a day with a time (2026-10-06 09:45), a day, or a time of day. */
    public static boolean isReal(String text) {
        return day(text).isPresent()
                || parsed(() -> LocalTime.parse(plain(text), TIME)).isPresent();
    }

    /** The day of a time; empty for a time of day, and for what is no time. */
    public static Optional<LocalDate> day(String text) {
        String plain = plain(text);
        return plain.length() > 10
                ? parsed(() -> LocalDateTime.parse(plain, DAY_AND_TIME).toLocalDate())
                : parsed(() -> LocalDate.parse(plain, DAY));
    }

    private static String plain(String text) {
        return text.strip().replace('T', ' ');
    }

    private static <T> Optional<T> parsed(Supplier<T> attempt) {
        try {
            return Optional.of(attempt.get());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
