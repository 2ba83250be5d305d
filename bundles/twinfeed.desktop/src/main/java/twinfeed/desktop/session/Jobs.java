// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import twinfeed.model.survey.Survey;

/** The open jobs, as far as a job or the start page has to do with them. */
public interface Jobs {
    /** Opens a job, or comes back to it if it is open. */
    void open(Path file);

    /** Forgets an open job as it is here, and reads its file again. */
    void readAgain(JobSession job);

    /** Forgets an open job as it is here, and goes on with the changes of an earlier sitting. */
    void takeOldChanges(JobSession job);

    /**
     * Explains a check.
     *
     * @param check its key; null lists all checks
     * @param job the job from which examples come; null for none
     */
    void explain(@Nullable String check, @Nullable JobSession job);

    /**
     * Makes a job with readings in it, and opens it.
     *
     * @param file where it is to be
     * @param catalogue the heaters on offer
     * @param survey makes the readings
     */
    void create(Path file, Path catalogue, Supplier<Survey> survey);

    /** Shows the quotes that the office has issued. */
    void showIssued();

    /** A job was opened or saved there. */
    void remember(Path file);
}
