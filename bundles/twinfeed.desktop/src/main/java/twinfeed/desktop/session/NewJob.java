// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** A job before anything was recorded. */
public final class NewJob {
    private NewJob() {}

    /**
     * Writes an empty job.
     *
     * @param file where it is to be
     * @param catalogue the heaters on offer; the job names them relative to itself
     * @throws twinfeed.model.io.InputException if the catalogue cannot be used or the file cannot be written
     * @throws IllegalArgumentException if no relative path leads from one to the other, as between two drives
     */
    public static void write(Path file, Path catalogue) {
        write(file, catalogue, SurveyFactory.eINSTANCE.createSurvey());
    }

    /**
     * Writes a job with the readings that are known already; likewise.
     *
     * @param survey those readings; it belongs to the job afterwards
     */
    public static void write(Path file, Path catalogue, Survey survey) {
        CatalogueFile.load(catalogue);
        Path folder = RelatedFiles.folder(file);
        Job job = JobFile.create();
        job.setSurvey(survey);
        job.setCatalogue(
                RelatedFiles.relative(folder, catalogue.toAbsolutePath().normalize()));
        JobFile.save(job, file);
    }
}
