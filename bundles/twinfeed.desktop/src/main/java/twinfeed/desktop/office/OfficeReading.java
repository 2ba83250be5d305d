// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.office;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.Threads;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.io.FileFingerprint;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.office.OfficeFolder;
import twinfeed.usecase.office.OfficeJob;

/**
 * Reads an office's folder out of the way, and then looks job by job how many readings are still needed. What was looked at once
 * is not looked at again as long as its file is the same.
 */
public final class OfficeReading {
    private record Known(FileFingerprint mark, int readings) {}

    private final JobServices services;
    private final Threads threads;
    private final Map<Path, Known> known = new ConcurrentHashMap<>();
    private volatile int reading;

    /** With nothing known yet. */
    public OfficeReading(JobServices services, Threads threads) {
        this.services = services;
        this.threads = threads;
    }

    /**
     * Reads.
     *
     * @param office the folder
     * @param elsewhere tells jobs that are kept elsewhere
     * @param found told what is there, in the thread of the display
     * @param looked told, in the same thread, whenever it has become known of a job what it needs
     */
    public void read(
            Path office, Supplier<List<Path>> elsewhere, Consumer<OfficeFolder> found, Consumer<OfficeJob> looked) {
        int mine = ++reading;
        List<Path> others = elsewhere.get();
        threads.quick().execute(() -> {
            OfficeFolder folder = OfficeFolder.read(office, others);
            threads.display().execute(() -> {
                if (mine == reading) {
                    found.accept(folder);
                }
            });
            folder.jobs().forEach(job -> look(job, mine, looked));
        });
    }

    /** A piece of work for each job, so that a job that is being typed into comes in between. */
    private void look(OfficeJob job, int mine, Consumer<OfficeJob> looked) {
        threads.quick().execute(() -> {
            Known before = known.get(job.file());
            FileFingerprint mark = FileFingerprint.of(job.file());
            if (mine != reading || (before != null && before.mark().equals(mark))) {
                return;
            }
            known.put(job.file(), new Known(mark, needed(job.file())));
            threads.display().execute(() -> {
                if (mine == reading) {
                    looked.accept(job);
                }
            });
        });
    }

    /** How many readings the checks wait for; negative for a job that cannot be judged. */
    private int needed(Path file) {
        try {
            OpenedJob opened = services.service().open(file, null);
            return (int) services.service().quickAssess(opened, services.locale()).record().getOptions().stream()
                    .flatMap(option -> option.getFindings().stream())
                    .filter(finding -> finding.getOutcome() == Outcome.CANNOT_TELL)
                    .flatMap(finding -> finding.getMissingPaths().stream())
                    .distinct()
                    .count();
        } catch (RuntimeException | LinkageError refused) {
            return -1;
        }
    }

    /** How many readings a job still needs; negative if it cannot be judged, empty if nobody has looked yet. */
    public OptionalInt readings(OfficeJob job) {
        Known found = known.get(job.file());
        return found == null ? OptionalInt.empty() : OptionalInt.of(found.readings());
    }
}
