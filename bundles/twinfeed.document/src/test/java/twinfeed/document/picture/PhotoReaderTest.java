// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhotoReaderTest {
    /** A JPEG of 120 x 60 whose top left quarter is red and the rest white, held as the tag says. */
    private static byte[] jpeg(int orientation, boolean littleEndian) throws IOException {
        BufferedImage image = new BufferedImage(120, 60, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, 120, 60);
        graphics.setColor(Color.RED);
        graphics.fillRect(0, 0, 60, 30);
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", out);
        byte[] plain = out.toByteArray();
        byte[] exif = littleEndian
                ? new byte[] {
                    'E',
                    'x',
                    'i',
                    'f',
                    0,
                    0,
                    'I',
                    'I',
                    42,
                    0,
                    8,
                    0,
                    0,
                    0,
                    1,
                    0,
                    0x12,
                    1,
                    3,
                    0,
                    1,
                    0,
                    0,
                    0,
                    (byte) orientation,
                    0,
                    0,
                    0,
                    0,
                    0,
                    0,
                    0
                }
                : new byte[] {
                    'E',
                    'x',
                    'i',
                    'f',
                    0,
                    0,
                    'M',
                    'M',
                    0,
                    42,
                    0,
                    0,
                    0,
                    8,
                    0,
                    1,
                    1,
                    0x12,
                    0,
                    3,
                    0,
                    0,
                    0,
                    1,
                    0,
                    (byte) orientation,
                    0,
                    0,
                    0,
                    0,
                    0,
                    0
                };
        ByteArrayOutputStream held = new ByteArrayOutputStream();
        held.write(plain, 0, 2);
        held.write(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (exif.length + 2)});
        held.write(exif);
        held.write(plain, 2, plain.length - 2);
        return held.toByteArray();
    }

    /**
     * Where the red quarter of the stored picture lies when it is shown upright: by the table of the Exif standard, JEITA CP-3451
     * 4.6.4, which says on which side row 0 and column 0 are.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 120, 60, top, left", "2, 120, 60, top, right", "3, 120, 60, bottom, right", "4, 120, 60, bottom, left",
        "5, 60, 120, top, left", "6, 60, 120, top, right", "7, 60, 120, bottom, right", "8, 60, 120, bottom, left"
    })
    void everyWayOfHoldingACameraComesUpright(int tag, int width, int height, String end, String side)
            throws IOException {
        for (boolean littleEndian : new boolean[] {true, false}) {
            Picture picture = PhotoReader.read(jpeg(tag, littleEndian));
            assertEquals(width, picture.width());
            assertEquals(height, picture.height());
            BufferedImage shown = ImageIO.read(new ByteArrayInputStream(picture.bytes()));
            int x = side.equals("left") ? width / 4 : width * 3 / 4;
            int y = end.equals("top") ? height / 4 : height * 3 / 4;
            Color red = new Color(shown.getRGB(x, y));
            assertTrue(red.getRed() > 200 && red.getGreen() < 90, "red at " + end + " " + side + ": " + red);
            Color white = new Color(shown.getRGB(width - 1 - x, height - 1 - y));
            assertTrue(white.getGreen() > 200, "white opposite: " + white);
        }
    }

    @Test
    void aLargePictureIsMadeSmall() throws IOException {
        BufferedImage image = new BufferedImage(5000, 3000, BufferedImage.TYPE_BYTE_GRAY);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        Picture picture = PhotoReader.read(out.toByteArray());
        assertEquals(900, picture.width());
        assertEquals(540, picture.height());
    }

    @Test
    void whatIsNoPictureIsRefused() throws IOException {
        assertThrows(
                IOException.class,
                () -> PhotoReader.read("no picture".getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        byte[] whole = jpeg(1, true);
        assertThrows(IOException.class, () -> PhotoReader.read(Arrays.copyOf(whole, 40)));
        assertThrows(IOException.class, () -> PhotoReader.read(new byte[0]));
    }

    @Test
    void aDamagedTagLeavesThePictureAsItIs() throws IOException {
        byte[] odd = jpeg(99, true);
        assertEquals(120, PhotoReader.read(odd).width());
    }
}
