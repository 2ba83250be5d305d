// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import twinfeed.document.PhotoSource;

/** The pictures beside a job. A name that leads out of the job's folder opens nothing: a job may come from anywhere. */
final class JobPhotos implements PhotoSource {
    private final Path folder;

    /** Beside this job. */
    JobPhotos(Path job) {
        Path parent = job.toAbsolutePath().normalize().getParent();
        this.folder = parent == null ? Path.of("").toAbsolutePath() : parent;
    }

    @Override
    public @Nullable InputStream open(String file) throws IOException {
        Path picture;
        try {
            picture = folder.resolve(file).normalize();
        } catch (java.nio.file.InvalidPathException noName) {
            return null;
        }
        return picture.startsWith(folder) && Files.isRegularFile(picture) ? Files.newInputStream(picture) : null;
    }
}
