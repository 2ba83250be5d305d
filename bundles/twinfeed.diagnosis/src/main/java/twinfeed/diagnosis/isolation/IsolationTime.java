// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.isolation;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;

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
        String plain = text.strip().replace('T', ' ');
        return plain.length() > 10
                ? parses(() -> LocalDateTime.parse(plain, DAY_AND_TIME))
                : parses(() -> LocalDate.parse(plain, DAY)) || parses(() -> LocalTime.parse(plain, TIME));
    }

    private static boolean parses(Runnable attempt) {
        try {
            attempt.run();
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }
}
