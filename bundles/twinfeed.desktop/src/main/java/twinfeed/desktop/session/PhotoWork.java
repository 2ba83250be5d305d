// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.usecase.JobPhotos;

/** The photographs of a job: taken beside it, small where they are too large, and shown. Files are read and written out of the way. */
public final class PhotoWork {
    private static final String PASTED = "photo.png";

    private final JobSession session;
    private final Threads threads;

    PhotoWork(JobSession session, Threads threads) {
        this.session = session;
        this.threads = threads;
    }

    /**
     * Adds pictures to the job, one after the other; each can be undone, which leaves its file.
     *
     * @param refused is told why a picture cannot be used, in the window's thread
     */
    public void take(List<Path> pictures, Consumer<String> refused) {
        pictures.forEach(picture -> take(photos -> photos.take(picture), refused));
    }

    /** Adds a picture that was pasted; likewise. */
    public void take(byte[] content, Consumer<String> refused) {
        take(photos -> photos.take(content, PASTED), refused);
    }

    private void take(Function<JobPhotos, String> work, Consumer<String> refused) {
        Path job = session.file();
        threads.quick().execute(() -> {
            try {
                String name = work.apply(new JobPhotos(job));
                threads.display().execute(() -> {
                    Photo photo = SurveyFactory.eINSTANCE.createPhoto();
                    photo.setFile(name);
                    session.edits().add(session.survey(), List.of(Literals.SURVEY__PHOTOS), photo);
                });
            } catch (RuntimeException unusable) {
                threads.display().execute(() -> refused.accept(String.valueOf(unusable.getMessage())));
            }
        });
    }

    /**
     * Reads a picture to be shown.
     *
     * @param file its name in the job
     * @param longest longest side, pixels
     * @param show takes it as JPEG or PNG, in the window's thread
     * @param missing is told why there is none
     */
    public void read(String file, int longest, Consumer<byte[]> show, Consumer<String> missing) {
        Path job = session.file();
        threads.quick().execute(() -> {
            try {
                byte[] content = new JobPhotos(job).small(file, longest);
                threads.display().execute(() -> show.accept(content));
            } catch (RuntimeException unusable) {
                threads.display().execute(() -> missing.accept(String.valueOf(unusable.getMessage())));
            }
        });
    }
}
