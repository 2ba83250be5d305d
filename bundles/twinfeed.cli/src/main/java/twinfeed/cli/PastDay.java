// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.isolation.IsolationTime;
import twinfeed.model.check.FutureDates;
import twinfeed.usecase.UnusableException;

/** The day of something that has happened: today where none is given, and never one that is still to come. */
final class PastDay {
    private final String option;
    private final String what;

    /**
     * For an option.
     *
     * @param option its name, {@code --date}
     * @param what what happened on the day, as a clause: {@code the customer answered}
     */
    PastDay(String option, String what) {
        this.option = option;
        this.what = what;
    }

    /**
     * The day that is meant.
     *
     * @param given the day that was given; null for today
     * @throws UnusableException if it is still to come
     */
    LocalDate of(@Nullable LocalDate given, LocalDate today) {
        LocalDate day = given == null ? today : given;
        check(day, day.toString(), today);
        return day;
    }

    /**
     * Looks at a time as people write it, of which the day may be left out; what is no time at all is left to others.
     *
     * @throws UnusableException if its day is still to come
     */
    void check(String time, LocalDate today) {
        Optional<LocalDate> day = IsolationTime.day(time);
        if (day.isPresent()) {
            check(day.get(), time, today);
        }
    }

    private void check(LocalDate day, String given, LocalDate today) {
        if (FutureDates.ahead(day, today)) {
            throw new UnusableException(
                    option + " " + given + ": this day is still to come, today is " + today + "; give the day on which "
                            + what,
                    new IllegalArgumentException(given));
        }
    }
}
