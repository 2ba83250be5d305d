// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.runtime.ILog;
import twinfeed.model.io.InputException;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;

/**
 * A copy of a job beside its file, written while there are changes that were not saved. It is left behind only if the program
 * ended without being asked to: nothing that was typed is lost then.
 *
 * @param file the job's own file
 */
public record BackupCopy(Path file) {
    private static final String ENDING = ".unsaved";

    /** Where the copy is. */
    public Path path() {
        return file.toAbsolutePath().resolveSibling("." + file.getFileName() + ENDING);
    }

    /** Whether one was left behind. */
    public boolean there() {
        return Files.isRegularFile(path());
    }

    /** Writes the copy. A folder that nobody may write to gets none, which must not keep anybody from working. */
    void write(Job job) {
        try {
            JobFile.save(job, path());
        } catch (InputException unwritable) {
            ILog.of(BackupCopy.class).warn("no copy of unsaved changes can be kept", unwritable);
        }
    }

    /**
     * The job with the changes that were not saved.
     *
     * @throws InputException if the copy cannot be used
     */
    public Job job() {
        return JobFile.load(path());
    }

    /** The changes were saved, or nobody wants them. */
    public void drop() {
        try {
            Files.deleteIfExists(path());
        } catch (IOException stays) {
            ILog.of(BackupCopy.class).warn("the copy of unsaved changes cannot be removed", stays);
        }
    }
}
