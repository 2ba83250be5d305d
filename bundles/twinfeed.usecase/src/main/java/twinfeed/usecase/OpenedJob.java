// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Path;
import java.util.List;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.job.Job;

/**
 * A job that was opened and found usable.
 *
 * @param file where it is
 * @param job the job
 * @param catalogue the heaters on offer
 * @param warnings what is odd in it, in words, but does not stop it
 */
public record OpenedJob(Path file, Job job, Catalogue catalogue, List<String> warnings) {
    public OpenedJob {
        warnings = List.copyOf(warnings);
    }
}
