// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Photo;

/**
 * The catalogue and the photographs that a job names relative to its own file, kept findable when that file moves.
 *
 * @param from where the job was
 * @param to where it goes
 */
record RelatedFiles(Path from, Path to) {

    /**
     * Changes the names so that they lead to the same files from the new place.
     *
     * @throws IllegalArgumentException if no relative path leads there, as between two drives
     */
    void move(Job job) {
        job.setCatalogue(moved(job.getCatalogue()));
        for (Photo photo : job.getSurvey().getPhotos()) {
            photo.setFile(moved(photo.getFile()));
        }
    }

    private @Nullable String moved(@Nullable String name) {
        Path oldFolder = folder(from);
        Path newFolder = folder(to);
        if (name == null || name.isBlank() || oldFolder.equals(newFolder)) {
            return name;
        }
        return relative(newFolder, oldFolder.resolve(name).normalize());
    }

    /**
     * The path from a folder to a file, with slashes on every system, as job files travel.
     *
     * @throws IllegalArgumentException if there is none, as between two drives
     */
    static String relative(Path folder, Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }

    /** The folder of a file. */
    static Path folder(Path file) {
        Path parent = file.toAbsolutePath().normalize().getParent();
        return parent == null ? file.toAbsolutePath() : parent;
    }
}
