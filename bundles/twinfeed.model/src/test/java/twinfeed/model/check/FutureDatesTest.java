// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobFactory;
import twinfeed.model.survey.SurveyFactory;

/** Days that are still to come. */
class FutureDatesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static Job job(LocalDate day) {
        Job job = JobFile.create();
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        job.getSurvey().setTakenOn(day);
        job.getSurvey().setSite(SurveyFactory.eINSTANCE.createSite());
        job.getSurvey().getSite().setLastInspection(day);
        job.setCompletion(JobFactory.eINSTANCE.createCompletion());
        job.getCompletion().setDoneOn(day);
        return job;
    }

    @Test
    void eachDayThatIsStillToComeIsNamedWithItsReading() {
        assertEquals(
                List.of(
                        "warning: survey.takenOn \"2031-03-01\": this day is still to come, today is 2026-11-25; write the"
                                + " day on which the house was surveyed",
                        "warning: survey.site.lastInspection \"2031-03-01\": this day is still to come, today is"
                                + " 2026-11-25; write the day on which the wiring was last inspected",
                        "warning: completion.doneOn \"2031-03-01\": this day is still to come, today is 2026-11-25; write"
                                + " the day on which the work was tested"),
                FutureDates.of(job(LocalDate.of(2031, 3, 1)), TODAY).stream()
                        .map(Problem::toString)
                        .toList());
    }

    @Test
    void todayAndWhatWasBeforeAreNone() {
        assertEquals(List.of(), FutureDates.of(job(TODAY), TODAY));
        assertEquals(List.of(), FutureDates.of(job(TODAY.minusYears(20)), TODAY));
        assertEquals(List.of(), FutureDates.of(JobFile.create(), TODAY), "a job without a survey");
    }

    /** Clocks on the wall differ by 26 hours at most: UTC+14 (Line Islands) and UTC-12 (time zones of the tz database). */
    @Test
    void noPlaceOnEarthIsTwoDaysAhead() {
        ZonedDateTime west = ZonedDateTime.of(2026, 11, 25, 23, 59, 0, 0, ZoneOffset.ofHours(-12));
        LocalDate east = west.withZoneSameInstant(ZoneOffset.ofHours(14)).toLocalDate();
        assertEquals(LocalDate.of(2026, 11, 27), east);
        assertFalse(FutureDates.ahead(TODAY.plusDays(1), TODAY));
        assertTrue(FutureDates.ahead(TODAY.plusDays(2), TODAY));
    }
}
