// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.job.Completion;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobPackage;
import twinfeed.model.survey.Survey;

/**
 * Checks a job before anything is calculated from it. Ids of rule sets, climates, symptoms and fittings are known only to the
 * calculators, and are checked there.
 */
public final class JobCheck {
    private JobCheck() {}

    /**
     * What is wrong with a job. What is wrong with the catalogue itself is another question: {@link CatalogueCheck}.
     *
     * @param job the job; not changed
     * @param catalogue the catalogue that it names; null if it cannot be had, and then ids of heaters are not judged
     * @return problems in the order of the file, errors and warnings mixed; empty if all is well
     */
    public static List<Problem> of(Job job, @Nullable Catalogue catalogue) {
        Problems problems = new Problems();
        Survey survey = job.getSurvey();
        if (survey == null) {
            problems.error(job, JobPackage.Literals.JOB__SURVEY, "survey.none");
            return problems.list();
        }
        check(survey, catalogue, problems);
        completion(job.getCompletion(), catalogue, problems);
        return problems.list();
    }

    /**
     * The same, and the days on which something is said to have been done and which are still to come: {@link FutureDates}.
     *
     * @param today today's date where the program runs; null if nobody knows it, and then no day is taken for one to come
     */
    public static List<Problem> of(Job job, @Nullable Catalogue catalogue, @Nullable LocalDate today) {
        List<Problem> problems = new ArrayList<>(of(job, catalogue));
        if (today != null) {
            problems.addAll(FutureDates.of(job, today));
        }
        return problems;
    }

    private static void completion(@Nullable Completion completion, @Nullable Catalogue catalogue, Problems problems) {
        if (completion == null) {
            return;
        }
        ObjectRules.checkAll(completion, problems);
        if (completion.getHeaterId() != null && catalogue != null) {
            NameRules.leads(
                    completion,
                    JobPackage.Literals.COMPLETION__HEATER_ID,
                    completion.getHeaterId(),
                    NameRules.names(catalogue.getHeaters(), CataloguePackage.Literals.HEATER__ID),
                    "fitted.unknown",
                    problems);
        }
    }

    /**
     * What is wrong with a survey, for one that is in no job.
     *
     * @param survey the survey; not changed
     * @param catalogue the catalogue; null if it cannot be had
     */
    public static List<Problem> of(Survey survey, @Nullable Catalogue catalogue) {
        Problems problems = new Problems();
        check(survey, catalogue, problems);
        return problems.list();
    }

    private static void check(Survey survey, @Nullable Catalogue catalogue, Problems problems) {
        SurveyRules.survey(survey, catalogue, problems);
        ObjectRules.checkAll(survey, problems);
    }
}
