// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.picture;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.LinkedHashMap;
import java.util.Map;

/** Drawn pictures, such as logos, have few colours, and half the bytes when each pixel names one of them. */
final class Palettes {
    private static final int MOST_COLOURS = 256;

    private Palettes() {}

    /** The picture with a palette if it has few enough colours, otherwise as it is; the colours stay the same. */
    static BufferedImage indexed(BufferedImage image) {
        int width = image.getWidth();
        int[] pixels = image.getRGB(0, 0, width, image.getHeight(), null, 0, width);
        Map<Integer, Integer> colours = new LinkedHashMap<>();
        for (int pixel : pixels) {
            colours.putIfAbsent(pixel, colours.size());
            if (colours.size() > MOST_COLOURS) {
                return image;
            }
        }
        int[] palette = colours.keySet().stream().mapToInt(Integer::intValue).toArray();
        IndexColorModel model =
                new IndexColorModel(8, palette.length, palette, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
        BufferedImage result = new BufferedImage(width, image.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model);
        for (int at = 0; at < pixels.length; at++) {
            result.getRaster().setSample(at % width, at / width, 0, colours.getOrDefault(pixels[at], 0));
        }
        return result;
    }
}
