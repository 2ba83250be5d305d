// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.time.LocalDate;
import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.jspecify.annotations.Nullable;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobPackage;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage.Literals;

/**
 * Days of a job on which something is said to have been done, and which are still to come: a slip of the pen in the year, or a clock that is wrong.
 * What today is, the caller says.
 */
public final class FutureDates {
    private FutureDates() {}

    /**
     * Whether a day is still to come everywhere. The day after today has begun already in the east of the world while it is today in the west.
     *
     * @param day the day
     * @param today today's date where the program runs
     */
    public static boolean ahead(LocalDate day, LocalDate today) {
        return day.isAfter(today.plusDays(1));
    }

    /**
     * The days of survey, last inspection and tests after the work that are still to come.
     *
     * @param job the job; not changed
     * @param today today's date where the program runs
     * @return warnings in the order of the file; empty if all is well
     */
    public static List<Problem> of(Job job, LocalDate today) {
        Problems problems = new Problems();
        Survey survey = job.getSurvey();
        check(survey, Literals.SURVEY__TAKEN_ON, "date.ahead.survey", today, problems);
        check(
                survey == null ? null : survey.getSite(),
                Literals.SITE__LAST_INSPECTION,
                "date.ahead.inspection",
                today,
                problems);
        check(job.getCompletion(), JobPackage.Literals.COMPLETION__DONE_ON, "date.ahead.tests", today, problems);
        return problems.list();
    }

    private static void check(
            @Nullable EObject object, EAttribute attribute, String key, LocalDate today, Problems problems) {
        if (object != null && object.eGet(attribute) instanceof LocalDate day && ahead(day, today)) {
            problems.warning(object, attribute, key, today.toString());
        }
    }
}
