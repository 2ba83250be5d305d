// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Drawn pictures keep their colours, and photographs are found upright wherever a camera puts its tag. */
class LogoTest {
    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    private static BufferedImage shown(Picture picture) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(picture.bytes()));
    }

    /** Paper is white: what is transparent in a logo is printed white, the rest in its own colour, each pixel where it was. */
    @Test
    void aLogoKeepsItsColours() throws IOException {
        BufferedImage image = new BufferedImage(40, 20, BufferedImage.TYPE_INT_ARGB);
        for (int x = 0; x < 20; x++) {
            for (int y = 0; y < 10; y++) {
                image.setRGB(x, y, 0xFF2F5D7C);
            }
        }
        image.setRGB(39, 19, 0xFFC9761F);
        Picture logo = PhotoReader.read(png(image));
        assertFalse(logo.jpeg());
        BufferedImage shown = shown(logo);
        assertInstanceOf(IndexColorModel.class, shown.getColorModel());
        assertEquals(0xFF2F5D7C, shown.getRGB(5, 5));
        assertEquals(0xFFC9761F, shown.getRGB(39, 19));
        assertEquals(Color.WHITE.getRGB(), shown.getRGB(30, 5));
        assertEquals(Color.WHITE.getRGB(), shown.getRGB(5, 15));
    }

    /** 256 colours fit into a palette; of one more none may be lost. */
    @Test
    void noColourIsLost() throws IOException {
        BufferedImage image = new BufferedImage(257, 1, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 257; x++) {
            image.setRGB(x, 0, x * 1000);
        }
        BufferedImage all = shown(PhotoReader.read(png(image)));
        for (int x = 0; x < 257; x++) {
            assertEquals(0xFF000000 | x * 1000, all.getRGB(x, 0), "colour " + x);
        }
        BufferedImage fewer = shown(PhotoReader.read(png(image.getSubimage(0, 0, 256, 1))));
        assertInstanceOf(IndexColorModel.class, fewer.getColorModel());
        assertEquals(0xFF000000 | 255 * 1000, fewer.getRGB(255, 0));
    }

    /** A picture at another size; a smaller one stays as large as it is, and nothing gets narrower than a pixel. */
    @Test
    void theLongestSide() throws IOException {
        Picture small = PhotoReader.read(png(new BufferedImage(400, 100, BufferedImage.TYPE_BYTE_GRAY)), 100);
        assertEquals(100, small.width());
        assertEquals(25, small.height());
        assertEquals(
                40,
                PhotoReader.read(png(new BufferedImage(40, 10, BufferedImage.TYPE_BYTE_GRAY)), 100)
                        .width());
        assertEquals(
                1,
                PhotoReader.read(png(new BufferedImage(900, 1, BufferedImage.TYPE_BYTE_GRAY)), 90)
                        .height());
    }

    @Test
    void whatIsRefusedIsSaid() {
        assertEquals("it is larger than 64 MiB", PhotoReader.tooLarge().getMessage());
        String unknown = assertThrows(IOException.class, () -> PhotoReader.read(new byte[] {1, 2, 3}))
                .getMessage();
        assertTrue(unknown.contains("no picture"), unknown);
    }

    /** The tag of how the camera was held, after a segment of another kind and another tag of its directory. */
    @Test
    void theTagMayStandBehindOthers() throws IOException {
        BufferedImage image = new BufferedImage(120, 60, BufferedImage.TYPE_INT_RGB);
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", plain);
        byte[] jpeg = plain.toByteArray();
        byte[] exif = {
            'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42, 0, 0, 0, 8, 0, 2, 1, 0x0F, 0, 3, 0, 0, 0, 1, 0, 1, 0, 0, 1, 0x12,
            0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0
        };
        assertEquals(60, PhotoReader.read(with(jpeg, exif)).width(), "held upright");
        exif[29] = 0x13;
        assertEquals(120, PhotoReader.read(with(jpeg, exif)).width(), "no tag at all");
        exif[29] = 0x12;
        exif[37] = 0;
        assertEquals(120, PhotoReader.read(with(jpeg, exif)).width(), "a tag of 0");
        assertEquals(120, PhotoReader.read(jpeg).width());
        assertTrue(PhotoReader.read(jpeg).jpeg());
        assertEquals(120, PhotoReader.read(with(jpeg, Arrays.copyOf(exif, 20))).width(), "cut off in the middle");
    }

    /** Start of image, a comment of three bytes, the tag, and the rest of the picture. */
    private static byte[] with(byte[] jpeg, byte[] exif) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(new byte[] {(byte) 0xFF, (byte) 0xFE, 0, 5, 'a', 'b', 'c'});
        out.write(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (exif.length + 2)});
        out.write(exif);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }
}
