// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.survey.Photo;
import twinfeed.usecase.TwinfeedService;

/** Photographs are copied and read out of the way, and told of in the window's thread. */
final class PhotoWorkTest {
    @TempDir
    Path folder;

    private final List<Runnable> quick = new ArrayList<>();
    private final List<Runnable> display = new ArrayList<>();
    private final List<String> refused = new ArrayList<>();
    private final List<byte[]> shown = new ArrayList<>();
    private JobSession session;

    @BeforeEach
    void open() throws Exception {
        DemoFiles.copyInto(folder);
        TwinfeedService service = new TwinfeedService(List.of());
        Path file = folder.resolve("alder-beck.job");
        session = new JobSession(
                new OpenJob(service.open(file, null), FileFingerprint.of(file), false),
                new JobServices(service, Clock.systemUTC(), Locale.UK),
                new Threads(quick::add, work -> {}, display::add));
    }

    private static void work(List<Runnable> queue) {
        List<Runnable> waiting = List.copyOf(queue);
        queue.clear();
        waiting.forEach(Runnable::run);
    }

    private List<String> photos() {
        return session.survey().getPhotos().stream().map(Photo::getFile).toList();
    }

    @Test
    void picturesAreAddedToTheSurveyOnceTheyAreRead() throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("camera")).resolve("board.png");
        Files.copy(folder.resolve("netherquill.png"), elsewhere);
        Path text = Files.writeString(folder.resolve("camera").resolve("notes.png"), "no picture");
        session.photos().take(List.of(elsewhere, text), refused::add);
        assertEquals(List.of("alder-beck-loft.jpg"), photos());
        work(quick);
        assertEquals(List.of("alder-beck-loft.jpg"), photos(), "the survey belongs to the window's thread");
        work(display);
        assertEquals(List.of("alder-beck-loft.jpg", "camera/board.png"), photos());
        assertEquals(1, refused.size());
        assertTrue(refused.get(0).contains("notes.png"), refused.toString());
        session.edits().undo();
        assertEquals(1, photos().size());
    }

    @Test
    void pastedPictureIsKeptBesideTheJob() throws Exception {
        byte[] picture = Files.readAllBytes(folder.resolve("netherquill.png"));
        session.photos().take(picture, refused::add);
        session.photos().take(new byte[] {1, 2, 3}, refused::add);
        work(quick);
        work(display);
        assertEquals(List.of("alder-beck-loft.jpg", "photo.png"), photos());
        assertTrue(Files.exists(folder.resolve("photo.png")));
        assertEquals(1, refused.size());
    }

    @Test
    void pictureIsShownOrSaidToBeMissing() {
        session.photos().read("alder-beck-loft.jpg", 100, shown::add, refused::add);
        session.photos().read("gone.jpg", 100, shown::add, refused::add);
        work(quick);
        assertTrue(shown.isEmpty() && refused.isEmpty(), "both wait for the window's thread");
        work(display);
        assertEquals(1, shown.size());
        assertTrue(shown.get(0).length > 500);
        assertEquals(1, refused.size());
    }
}
