// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;

/** The open jobs, as far as a job or the start page has to do with them. */
public interface Jobs {
    /** Opens a job, or comes back to it if it is open. */
    void open(Path file);

    /** Forgets an open job as it is here, and reads its file again. */
    void readAgain(JobSession job);

    /** Forgets an open job as it is here, and goes on with the changes of an earlier sitting. */
    void takeOldChanges(JobSession job);

    /** A job was opened or saved there. */
    void remember(Path file);
}
