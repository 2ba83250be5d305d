// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import twinfeed.document.PhotoSource;
import twinfeed.document.picture.PhotoReader;
import twinfeed.document.picture.Picture;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.refusal.Refusals;

/** The pictures beside a job. A name that leads out of the job's folder opens nothing: a job may come from anywhere. */
public final class JobPhotos implements PhotoSource {
    /** Longest side of a picture that is made smaller, pixels: more than any paper shows. */
    private static final int LONGEST_KEPT = 2400;

    /** A file up to this size is kept as it is, bytes. */
    private static final int LARGEST_KEPT = 3 << 20;

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

    /**
     * Puts a picture beside the job, so that it travels with it. One that lies in the job's folder already stays where it is; one that
     * is larger than a paper can use is made smaller, upright; the original is left alone.
     *
     * @return its name for the job
     * @throws InputException if it is no picture that can be read, or cannot be copied
     */
    public String take(Path picture) {
        Path whole = picture.toAbsolutePath().normalize();
        try {
            if (Files.size(whole) > PhotoReader.LARGEST_FILE) {
                throw refused(whole.toString(), Refusals.wrong("photo.large"));
            }
            byte[] content = Files.readAllBytes(whole);
            // Also read where it stays, so that what cannot be shown is refused at once.
            Picture small = PhotoReader.read(content, LONGEST_KEPT);
            if (whole.startsWith(folder)) {
                return folder.relativize(whole).toString().replace('\\', '/');
            }
            String name = String.valueOf(whole.getFileName());
            return content.length <= LARGEST_KEPT
                    ? place(content, name)
                    : place(small.bytes(), name.replaceFirst("\\.[^.]*$", "") + (small.jpeg() ? ".jpg" : ".png"));
        } catch (IOException unreadable) {
            throw new InputException(problem(whole.toString(), String.valueOf(unreadable.getMessage())), unreadable);
        }
    }

    /**
     * Puts a picture beside the job that is no file yet, as one that was pasted.
     *
     * @param content a PNG or JPEG
     * @param name how it may be called; a number is added where there is a file of that name
     */
    public String take(byte[] content, String name) {
        try {
            PhotoReader.read(content, LONGEST_KEPT);
            return place(content, name);
        } catch (IOException unreadable) {
            throw new InputException(problem(name, String.valueOf(unreadable.getMessage())), unreadable);
        }
    }

    /** A free name, or that of a file with the same content: the same picture is not kept twice. */
    private String place(byte[] content, String name) throws IOException {
        int dot = name.lastIndexOf('.');
        String bare = dot < 0 ? name : name.substring(0, dot);
        String ending = dot < 0 ? "" : name.substring(dot);
        String free = name;
        for (int number = 2; Files.exists(folder.resolve(free)); number++) {
            if (Arrays.equals(content, Files.readAllBytes(folder.resolve(free)))) {
                return free;
            }
            free = bare + "-" + number + ending;
        }
        AtomicFile.write(folder.resolve(free), content);
        return free;
    }

    /**
     * A picture of the job, upright and small, as JPEG or PNG.
     *
     * @param file its name in the job
     * @param longest longest side, pixels
     * @throws InputException if there is no such picture in the job's folder, or it cannot be read
     */
    public byte[] small(String file, int longest) {
        Path picture = inside(file);
        if (picture == null) {
            throw refused(file, problem(file));
        }
        try {
            return PhotoReader.read(Files.readAllBytes(picture), longest).bytes();
        } catch (IOException unreadable) {
            throw new InputException(problem(file, String.valueOf(unreadable.getMessage())), unreadable);
        }
    }

    private static InputException refused(String file, String wrong) {
        return new InputException(problem(file, wrong));
    }

    private static InputProblem problem(String file, String wrong) {
        return InputProblem.ofFile(file, wrong, Refusals.text("photo.right"));
    }

    /** Why a name opens nothing; empty if it opens a picture. */
    String problem(String file) {
        if (inside(file) != null) {
            return "";
        }
        return Refusals.text(elsewhere(file) ? "photo.outside" : "photo.missing");
    }

    /** Whether something of that name is there, if not where a picture may be; which names are none differs by system. */
    private boolean elsewhere(String file) {
        try {
            return Files.exists(folder.resolve(file));
        } catch (InvalidPathException none) {
            return false;
        }
    }

    /** The file of a name, links followed; null if there is none, or it lies elsewhere. */
    private @Nullable Path inside(String file) {
        try {
            Path picture = folder.resolve(file).normalize();
            boolean in = picture.startsWith(folder)
                    && Files.isRegularFile(picture)
                    && picture.toRealPath().startsWith(folder.toRealPath());
            return in ? picture : null;
        } catch (InvalidPathException | IOException none) {
            return null;
        }
    }
}
