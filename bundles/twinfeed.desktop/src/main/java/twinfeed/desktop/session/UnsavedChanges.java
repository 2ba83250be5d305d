// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.util.concurrent.atomic.AtomicLong;
import twinfeed.model.job.Job;

/**
 * Keeps a copy of a job's changes that are not saved, so that a crash costs none of them; it is written on a thread of its own. While
 * changes of an earlier sitting wait for somebody to say what is to become of them, no copy of newer ones may take their place.
 */
final class UnsavedChanges {
    private final Threads threads;
    private final AtomicLong changes = new AtomicLong();
    private boolean old;

    /**
     * Of one job.
     *
     * @param old whether changes of an earlier sitting wait
     */
    UnsavedChanges(Threads threads, boolean old) {
        this.threads = threads;
        this.old = old;
    }

    /** Whether changes of an earlier sitting wait for an answer. */
    boolean old() {
        return old;
    }

    /** Changes of an earlier sitting wait no longer. */
    void forgetOld() {
        old = false;
    }

    /**
     * Keeps the job as it is now, or no copy if nothing is changed.
     *
     * @param copy a copy of the job, which nobody changes
     */
    void keep(BackupCopy backup, Job copy, boolean dirty) {
        if (old) {
            return;
        }
        long change = changes.incrementAndGet();
        threads.quick().execute(() -> {
            if (change == changes.get()) {
                if (dirty) {
                    backup.write(copy);
                } else {
                    backup.drop();
                }
            }
        });
    }

    /** What was saved or given up needs no copy, also none that is just being written. */
    void drop(BackupCopy backup) {
        if (!old) {
            changes.incrementAndGet();
            threads.quick().execute(backup::drop);
        }
    }
}
