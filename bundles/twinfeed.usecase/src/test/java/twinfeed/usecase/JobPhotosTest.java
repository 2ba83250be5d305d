// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.io.InputException;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** Pictures are read back by the JDK's own reader. */
class JobPhotosTest {
    @TempDir
    private Path scratch = Path.of("");

    private Path job = Path.of("");
    private JobPhotos photos = new JobPhotos(job);

    @BeforeEach
    void job() throws IOException {
        job = Files.createDirectory(scratch.resolve("job")).resolve("a.job");
        photos = new JobPhotos(job);
    }

    /** A picture of noise, which no format makes small. */
    private Path picture(String name, int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(7);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, random.nextInt(1 << 24));
            }
        }
        Path file = scratch.resolve(name);
        assertTrue(ImageIO.write(image, name.endsWith(".png") ? "png" : "jpg", file.toFile()));
        return file;
    }

    @Test
    void pictureIsCopiedBesideTheJobOnceAndKeepsItsName() throws IOException {
        Path meter = picture("meter.jpg", 400, 300);
        assertEquals("meter.jpg", photos.take(meter));
        assertEquals("meter.jpg", photos.take(meter), "the same picture is not kept twice");
        assertArrayEquals(
                Files.readAllBytes(meter), Files.readAllBytes(job.resolveSibling("meter.jpg")), "it is as it was");
        Path other = Files.createDirectory(scratch.resolve("other")).resolve("meter.jpg");
        Files.copy(picture("x.jpg", 300, 400), other);
        assertEquals("meter-2.jpg", photos.take(other));
        assertEquals("meter-2.jpg", photos.take(job.resolveSibling("meter-2.jpg")), "what lies there already stays");
    }

    @Test
    void pictureThatIsTooLargeIsMadeSmallerAndTheOriginalStays() throws IOException {
        Path large = picture("large.png", 3600, 1200);
        byte[] before = Files.readAllBytes(large);
        assertTrue(before.length > 3 << 20, "bytes: " + before.length);
        String name = photos.take(large);
        BufferedImage kept = ImageIO.read(job.resolveSibling(name).toFile());
        assertEquals(2400, kept.getWidth());
        assertEquals(800, kept.getHeight());
        assertArrayEquals(before, Files.readAllBytes(large));
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(photos.small(name, 240)));
        assertEquals(240, small.getWidth());
        assertEquals(80, small.getHeight());
    }

    @Test
    void whatIsNoPictureIsRefusedAndNotCopied() throws IOException {
        Path text = Files.writeString(scratch.resolve("no.png"), "this is no picture");
        assertThrows(InputException.class, () -> photos.take(text));
        assertThrows(InputException.class, () -> photos.take(scratch.resolve("none.jpg")));
        assertThrows(InputException.class, () -> photos.take(new byte[] {1, 2, 3}, "photo.png"));
        try (var files = Files.list(job.getParent())) {
            assertEquals(0, files.count());
        }
        InputException missing = assertThrows(InputException.class, () -> photos.small("gone.jpg", 240));
        assertTrue(missing.getMessage().contains("gone.jpg"), "the missing one is named: " + missing.getMessage());
        picture("outside.jpg", 10, 10);
        assertThrows(InputException.class, () -> photos.small("../outside.jpg", 240));
    }

    private Survey naming(@Nullable String... files) {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        for (String file : files) {
            Photo photo = SurveyFactory.eINSTANCE.createPhoto();
            photo.setFile(file);
            survey.getPhotos().add(photo);
        }
        return survey;
    }

    @Test
    void picturesOfASurveyAreThoseThatAreThere() throws IOException {
        photos.take(picture("meter.jpg", 40, 30));
        picture("outside.jpg", 10, 10);
        @Nullable String unnamed = null;
        Survey survey = naming("gone.jpg", "meter.jpg", unnamed, "../outside.jpg");
        assertEquals(Map.of("meter.jpg", job.resolveSibling("meter.jpg")), photos.of(survey));
        try (InputStream open = photos.open("meter.jpg")) {
            assertArrayEquals(Files.readAllBytes(job.resolveSibling("meter.jpg")), open.readAllBytes());
        }
        assertNull(photos.open("gone.jpg"));
    }

    @Test
    void aNameThatOpensNothingSaysWhy() throws IOException {
        photos.take(picture("meter.jpg", 40, 30));
        picture("outside.jpg", 10, 10);
        assertEquals("", photos.problem("meter.jpg"));
        assertEquals("there is no such file", photos.problem("gone.jpg"));
        assertEquals("there is no such file", photos.problem("no\0name.jpg"));
        assertEquals("it is no file in the job's folder", photos.problem("../outside.jpg"));
    }

    @Test
    void everyFurtherPictureOfANameGetsTheNextNumber() throws IOException {
        for (int at = 1; at <= 3; at++) {
            byte[] content = Files.readAllBytes(picture("x.png", 10 * at, 10));
            assertEquals(at == 1 ? "pasted.png" : "pasted-" + at + ".png", photos.take(content, "pasted.png"));
            assertEquals(at == 1 ? "pasted" : "pasted-" + at, photos.take(content, "pasted"));
            assertArrayEquals(content, Files.readAllBytes(job.resolveSibling(at == 1 ? "pasted" : "pasted-" + at)));
            assertEquals(at == 1 ? ".png" : "-" + at + ".png", photos.take(content, ".png"));
        }
    }

    /** By the signatures of the two formats: 89 50 4E 47 of PNG (ISO/IEC 15948), FF D8 of JPEG (ITU-T T.81). */
    @Test
    void aPictureThatIsMadeSmallerHasTheEndingOfItsFormat() throws IOException {
        for (String name : List.of("plan.png", "roof.jpg")) {
            // Of noise 4800 wide: more than 3 MiB in either format.
            String kept = photos.take(picture(name, 4800, name.endsWith(".png") ? 400 : 1600));
            byte[] content = Files.readAllBytes(job.resolveSibling(kept));
            assertEquals(name, kept);
            assertEquals(name.endsWith(".png") ? (byte) 0x89 : (byte) 0xFF, content[0]);
            assertEquals(2400, ImageIO.read(new ByteArrayInputStream(content)).getWidth());
        }
    }
}
