// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import twinfeed.document.PhotoSource;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.Survey;

/** The pictures beside a job. A name that leads out of the job's folder opens nothing: a job may come from anywhere. */
public final class JobPhotos implements PhotoSource {
    private final Path folder;

    /** Beside this job. */
    public JobPhotos(Path job) {
        Path parent = job.toAbsolutePath().normalize().getParent();
        this.folder = parent == null ? Path.of("").toAbsolutePath() : parent;
    }

    @Override
    public @Nullable InputStream open(String file) throws IOException {
        Path picture = inside(file);
        return picture == null ? null : Files.newInputStream(picture);
    }

    /** The pictures that a survey names and that are there, by that name. */
    public Map<String, Path> of(Survey survey) {
        Map<String, Path> files = new TreeMap<>();
        for (Photo photo : survey.getPhotos()) {
            String file = photo.getFile();
            Path picture = file == null ? null : inside(file);
            if (file != null && picture != null) {
                files.put(file, picture);
            }
        }
        return files;
    }

    /** Why a name opens nothing; empty if it opens a picture. */
    String problem(String file) {
        if (inside(file) != null) {
            return "";
        }
        return file.matches("[^\\x00]*") && Files.exists(folder.resolve(file))
                ? "it is no file in the job's folder"
                : "there is no such file";
    }

    /** The file of a name, links followed; null if there is none, or it lies elsewhere. */
    private @Nullable Path inside(String file) {
        try {
            Path picture = folder.resolve(file).normalize();
            boolean in = picture.startsWith(folder)
                    && Files.isRegularFile(picture)
                    && picture.toRealPath().startsWith(folder.toRealPath());
            return in ? picture : null;
        } catch (java.nio.file.InvalidPathException | IOException none) {
            return null;
        }
    }
}
