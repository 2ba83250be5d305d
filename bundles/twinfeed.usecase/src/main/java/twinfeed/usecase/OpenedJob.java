// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.io.InputProblem;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Photo;

/**
 * A job that was opened and found usable.
 *
 * @param file where it is
 * @param job the job
 * @param catalogue the heaters on offer
 * @param warnings what is odd in it, but does not stop it
 * @param fingerprint what its file held when it was read
 */
public record OpenedJob(
        Path file, Job job, Catalogue catalogue, List<InputProblem> warnings, FileFingerprint fingerprint) {
    public OpenedJob {
        warnings = List.copyOf(warnings);
    }

    /** A job that was made from another one, and whose file is not to be written. */
    public OpenedJob(Path file, Job job, Catalogue catalogue, List<InputProblem> warnings) {
        this(file, job, catalogue, warnings, FileFingerprint.NONE);
    }

    /** What the job is called: its file's name without the ending. */
    public String name() {
        return JobFile.name(file);
    }

    /** The files that it names: its own catalogue and its photographs. */
    public List<Path> companions() {
        Path folder = file.toAbsolutePath();
        Stream<@Nullable String> names = Stream.concat(
                Stream.of(job.getCatalogue()),
                job.getSurvey().getPhotos().stream().map(Photo::getFile));
        return names.flatMap(name -> name == null ? Stream.empty() : beside(folder, name))
                .toList();
    }

    private static Stream<Path> beside(Path file, String name) {
        try {
            return Stream.of(file.resolveSibling(name).normalize());
        } catch (InvalidPathException none) {
            return Stream.of();
        }
    }
}
