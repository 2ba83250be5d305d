// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.plugins.jpeg.JPEGImageWriteParam;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;
import twinfeed.units.text.Texts;

/**
 * Makes pictures small and upright. A picture is read in steps of several pixels where it is large, so that memory stays the same
 * whatever a camera delivers.
 */
public final class PhotoReader {
    /** Longest side of the picture in the book, pixels: sharp at the size at which it prints. */
    private static final Texts MESSAGES = new Texts(PhotoReader.class, "messages");

    private static final int LONGEST = 900;

    /** A file beyond this is refused, bytes. */
    public static final int LARGEST_FILE = 64 << 20;

    /** A picture beyond this is refused, pixels. */
    private static final long MOST_PIXELS = 400_000_000L;

    private PhotoReader() {}

    /**
     * Reads a picture.
     *
     * @param file the file's content
     * @return the picture, upright, as JPEG; as PNG where the file is one
     * @throws IOException if it is no picture that can be read; the message says what is wrong
     */
    public static Picture read(byte[] file) throws IOException {
        return read(file, LONGEST);
    }

    /**
     * Reads a picture at another size.
     *
     * @param longest longest side that it may have, pixels; a smaller picture stays as large as it is
     */
    public static Picture read(byte[] file, int longest) throws IOException {
        try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new IOException(text("photo.unknown"));
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream, true, true);
                boolean jpeg = !reader.getFormatName().equalsIgnoreCase("png");
                BufferedImage upright = upright(sampled(reader, longest), longest, Orientation.of(file));
                return new Picture(encode(upright, jpeg), jpeg, upright.getWidth(), upright.getHeight());
            } catch (IllegalArgumentException | IndexOutOfBoundsException broken) {
                throw new IOException(text("photo.damaged"), broken);
            } finally {
                reader.dispose();
            }
        }
    }

    /** The refusal of a file of more than {@link #LARGEST_FILE} bytes. */
    public static IOException tooLarge() {
        return new IOException(text("photo.file", LARGEST_FILE >> 20));
    }

    /** Why, in the language of the program. */
    private static String text(String key, Object... arguments) {
        return MESSAGES.toReader(key, arguments);
    }

    private static BufferedImage sampled(ImageReader reader, int longest) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
            throw new IOException(text("photo.large", width, height));
        }
        ImageReadParam parameters = reader.getDefaultReadParam();
        int step = Math.max(1, Math.max(width, height) / (2 * longest));
        parameters.setSourceSubsampling(step, step, 0, 0);
        return reader.read(0, parameters);
    }

    /** Scales and turns in one go; transparent parts become white, which JPEG needs and paper is. */
    private static BufferedImage upright(BufferedImage image, int longest, Orientation orientation) {
        double scale = Math.min(1, longest / (double) Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
        boolean turned = orientation.swapsSides();
        BufferedImage result =
                new BufferedImage(turned ? height : width, turned ? width : height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = result.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, result.getWidth(), result.getHeight());
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform place = orientation.transform(width, height);
        place.scale(width / (double) image.getWidth(), height / (double) image.getHeight());
        graphics.drawImage(image, place, null);
        graphics.dispose();
        return result;
    }

    private static byte[] encode(BufferedImage image, boolean jpeg) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
        ImageIO.setUseCache(false);
        Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName(jpeg ? "jpg" : "png");
        if (!writers.hasNext()) {
            throw new IOException(text("photo.unwritable"));
        }
        ImageWriter writer = writers.next();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            ImageWriteParam how = writer.getDefaultWriteParam();
            if (how instanceof JPEGImageWriteParam photo) {
                photo.setOptimizeHuffmanTables(true);
            } else {
                // Of a PNG nothing is lost at any quality; the least one packs best.
                how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                how.setCompressionQuality(0);
            }
            writer.write(null, new IIOImage(jpeg ? image : Palettes.indexed(image), null, null), how);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
