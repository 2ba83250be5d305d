// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.JobFile;

/**
 * Where a new job is to be kept and which heaters are on offer, as they were typed.
 *
 * @param job name of the job's file; its ending may be left out
 * @param catalogue name of the catalogue's file
 */
public record NewJobEntries(String job, String catalogue) {
    /** What keeps the job from being begun, in words; empty if nothing does. */
    public String problem(Words words) {
        if (job.isBlank()) {
            return words.get("new.problem.noFile");
        }
        if (catalogue.isBlank()) {
            return words.get("new.problem.noCatalogue");
        }
        try {
            Path file = file();
            Path folder = file.toAbsolutePath().getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                return words.format("new.problem.noFolder", Map.of("folder", String.valueOf(folder)));
            }
            if (Files.exists(file)) {
                return words.format("new.problem.there", Map.of("file", file));
            }
            return Files.isRegularFile(heaters())
                    ? ""
                    : words.format("new.problem.noSuchCatalogue", Map.of("file", heaters()));
        } catch (InvalidPathException odd) {
            return words.format("new.problem.path", Map.of("name", odd.getInput()));
        }
    }

    /**
     * The job's file, with its ending.
     *
     * @throws InvalidPathException if no file can be called so
     */
    public Path file() {
        String name = job.strip();
        return Path.of(name.endsWith(JobFile.ENDING) ? name : name + JobFile.ENDING);
    }

    /**
     * The catalogue's file, {@value CatalogueFile#ENDING} by custom.
     *
     * @throws InvalidPathException if no file can be called so
     */
    public Path heaters() {
        return Path.of(catalogue.strip());
    }

    /** A name for a job in a folder that no file there has yet: {@code job-2026-11-25.job}, then with a number. */
    public static Path proposal(Path folder, java.time.LocalDate today) {
        Path proposed = folder.resolve("job-" + today + JobFile.ENDING);
        for (int i = 2; Files.exists(proposed); i++) {
            proposed = folder.resolve("job-" + today + "-" + i + JobFile.ENDING);
        }
        return proposed;
    }
}
