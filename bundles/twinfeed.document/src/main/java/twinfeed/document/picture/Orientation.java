// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.picture;

import java.awt.geom.AffineTransform;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held, by tag 0x0112 of Exif (JEITA CP-3451, 4.6.4): the values 1 to 8. Only that tag is read; where it is missing
 * or damaged the picture stays as it is.
 *
 * @param value the tag's value
 */
record Orientation(int value) {
    static final Orientation UPRIGHT = new Orientation(1);

    private static final int TAG = 0x0112;
    private static final int START_OF_SCAN = 0xDA;
    private static final int EXIF_SEGMENT = 0xE1;
    private static final long EXIF_HEAD = 0x4578696600000000L; // "Exif" and two zeros, then two bytes of the next field

    /** Of a file's content. */
    static Orientation of(byte[] file) {
        try {
            return find(ByteBuffer.wrap(file));
        } catch (IndexOutOfBoundsException damaged) {
            return UPRIGHT;
        }
    }

    private static Orientation find(ByteBuffer file) {
        if (Short.toUnsignedInt(file.getShort(0)) != 0xFFD8) {
            return UPRIGHT;
        }
        int at = 2;
        while (Byte.toUnsignedInt(file.get(at)) == 0xFF) {
            int marker = Byte.toUnsignedInt(file.get(at + 1));
            if (marker == START_OF_SCAN) {
                return UPRIGHT;
            }
            int length = Short.toUnsignedInt(file.getShort(at + 2));
            if (marker == EXIF_SEGMENT && (file.getLong(at + 4) & 0xFFFFFFFFFFFF0000L) == EXIF_HEAD) {
                return inDirectory(file.slice(at + 10, length - 8));
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static Orientation inDirectory(ByteBuffer exif) {
        exif.order(exif.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = exif.getInt(4);
        int entries = Short.toUnsignedInt(exif.getShort(directory));
        for (int entry = 0; entry < entries; entry++) {
            int at = directory + 2 + 12 * entry;
            if (Short.toUnsignedInt(exif.getShort(at)) == TAG) {
                int value = Short.toUnsignedInt(exif.getShort(at + 8));
                return value >= 1 && value <= 8 ? new Orientation(value) : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    /** Whether width and height change places. */
    boolean swapsSides() {
        return value >= 5;
    }

    /** Puts a picture of this size upright. */
    AffineTransform transform(int width, int height) {
        return switch (value) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }
}
