// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
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
        CatalogueFile.load(catalogue);
        Path folder = Companions.folder(file);
        Job job = JobFile.create();
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        job.setCatalogue(Companions.relative(folder, catalogue.toAbsolutePath().normalize()));
        JobFile.save(job, file);
    }
}
