// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobFactory;
import twinfeed.model.job.JobPackage;

/** Job files, {@code .job}: a survey and, where there is one, the draft of its quote. */
public final class JobFile {
    /** The ending of their names, with the dot. */
    public static final String ENDING = ".job";

    private static final ModelFile<Job> FORM = ModelFile.of(JobPackage.eINSTANCE.getJob(), Job.class);

    private JobFile() {}

    /** What a job is called: its file's name without the ending. */
    public static String name(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    /** A new job with its version mark and nothing else. */
    public static Job create() {
        Job job = JobFactory.eINSTANCE.createJob();
        job.setVersion(String.valueOf(ModelFile.CURRENT_VERSION));
        return job;
    }

    /**
     * Reads a job; an older form is migrated.
     *
     * @throws InputException if the file is missing or cannot be used
     */
    public static Job load(Path path) {
        return FORM.load(path);
    }

    /**
     * Writes a job; the file appears whole or not at all.
     *
     * @throws InputException if it cannot be written
     */
    public static void save(Job job, Path path) {
        FORM.save(job, path);
    }

    /**
     * A job as it was read.
     *
     * @param job the job
     * @param fingerprint what its file held then
     */
    public record Read(Job job, FileFingerprint fingerprint) {}

    /**
     * Reads a job, and keeps what its file held, so that it is not written over what somebody else has saved meanwhile.
     *
     * @throws InputException if the file is missing or cannot be used
     */
    public static Read read(Path path) {
        byte[] content = FileText.read(path);
        return new Read(FORM.read(path.toString(), content), FileFingerprint.of(content));
    }

    /**
     * Writes a job over what was read from its file; the file appears whole or not at all.
     *
     * @param expected what the file held when it was read, or {@link FileFingerprint#NONE} for a new one
     * @return what it holds now
     * @throws InputException if the file holds something else by now, which stays as it is, or cannot be written
     */
    public static FileFingerprint save(Job job, Path path, FileFingerprint expected) {
        byte[] content = FORM.bytes(path.toString(), job);
        return LockedFile.during(path, () -> {
            if (!FileFingerprint.of(path).equals(expected)) {
                throw Refusal.ofFile(path.toString(), "save.changed");
            }
            AtomicFile.write(path, content);
            return FileFingerprint.of(content);
        });
    }

    /** The form itself, for reading from and writing to memory. */
    public static ModelFile<Job> form() {
        return FORM;
    }

    /**
     * Reads the heater catalogue that a job names.
     *
     * @param job the job
     * @param path where the job's file is; the catalogue's name is relative to its folder
     * @throws InputException if the job names none, if its name is no relative one, or if it cannot be used
     */
    public static Catalogue catalogue(Job job, Path path) {
        String name = job.getCatalogue();
        if (name == null || name.isBlank()) {
            throw refused(path, "", "catalogue.none");
        }
        Path relative = relative(name, path);
        return CatalogueFile.load(path.toAbsolutePath().resolveSibling(relative).normalize());
    }

    private static Path relative(String name, Path path) {
        try {
            Path relative = Path.of(name);
            if (relative.isAbsolute() || !name.endsWith(CatalogueFile.ENDING)) {
                throw refused(path, name, "catalogue.name");
            }
            return relative;
        } catch (InvalidPathException e) {
            throw refused(path, name, "catalogue.name");
        }
    }

    private static InputException refused(Path path, String reading, String key) {
        return new InputException(
                new InputProblem(path.toString(), 0, "catalogue", reading, Refusal.wrong(key), Refusal.right(key)));
    }
}
