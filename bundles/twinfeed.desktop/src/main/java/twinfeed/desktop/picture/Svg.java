// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.picture;

import java.util.Locale;
import twinfeed.document.shape.Tone;

/**
 * A picture as SVG 1.1, written piece by piece: black and the tones for a light ground on white, texts as texts, so that they can be
 * searched and read out. Lengths are in CSS pixels, 1/96 inch.
 */
final class Svg {
    /** Size of letters. */
    static final int LETTERS = 14;

    /** How wide a letter is on average; a viewer may have another typeface, so that it is taken with room to spare. */
    private static final double AVERAGE = 0.56;

    /** Where a text stands: its place is its beginning, its middle or its end. */
    enum Anchor {
        /** It begins there. */
        START,
        /** Its middle is there. */
        MIDDLE,
        /** It ends there. */
        END
    }

    private final StringBuilder body = new StringBuilder();
    private final double width;
    private final double height;
    private final String title;

    /**
     * An empty picture.
     *
     * @param title what it shows, for those who hear it
     */
    Svg(double width, double height, String title) {
        this.width = width;
        this.height = height;
        this.title = title;
    }

    /** Colour of a tone. */
    static String colour(Tone tone) {
        String digits = Integer.toHexString(tone.rgb(false));
        return "#" + "0".repeat(6 - digits.length()) + digits;
    }

    /** As much of a text as there is room for; an ellipsis shows what is cut. */
    static String shortened(String text, double room) {
        int most = (int) (room / (AVERAGE * LETTERS));
        return text.length() <= most
                ? text
                : most < 2 ? "" : text.substring(0, most - 1).stripTrailing() + "\u2026";
    }

    /** About how wide a text is. */
    static double width(String text) {
        return text.length() * AVERAGE * LETTERS;
    }

    private static String number(double value) {
        return Double.toString(Math.round(value * 10) / 10.0);
    }

    private static String escaped(String text) {
        StringBuilder plain = new StringBuilder();
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> plain.append("&amp;");
                case '<' -> plain.append("&lt;");
                case '>' -> plain.append("&gt;");
                case '"' -> plain.append("&quot;");
                default -> {
                    // XML 1.0 has no control characters but these.
                    if (letter >= ' ' || letter == '\n' || letter == '\t') {
                        plain.appendCodePoint(letter);
                    }
                }
            }
        });
        return plain.toString();
    }

    /** A line. */
    void line(double x1, double y1, double x2, double y2, String colour, double thickness) {
        body.append("<line x1=\"")
                .append(number(x1))
                .append("\" y1=\"")
                .append(number(y1))
                .append("\" x2=\"")
                .append(number(x2))
                .append("\" y2=\"")
                .append(number(y2))
                .append("\" stroke=\"")
                .append(colour)
                .append("\" stroke-width=\"")
                .append(number(thickness))
                .append("\"/>\n");
    }

    /**
     * A line through several points.
     *
     * @param points x and y in turn
     * @param dashes lengths of strokes and gaps; empty for a whole line
     */
    void curve(double[] points, String colour, String dashes) {
        body.append("<polyline fill=\"none\" stroke-width=\"2\" stroke=\"")
                .append(colour)
                .append('"');
        if (!dashes.isEmpty()) {
            body.append(" stroke-dasharray=\"").append(dashes).append('"');
        }
        body.append(" points=\"").append(pairs(points)).append("\"/>\n");
    }

    /** A filled shape. */
    void shape(double[] points, String colour) {
        body.append("<polygon fill=\"")
                .append(colour)
                .append("\" points=\"")
                .append(pairs(points))
                .append("\"/>\n");
    }

    private static String pairs(double[] points) {
        StringBuilder pairs = new StringBuilder();
        for (int i = 0; i + 1 < points.length; i += 2) {
            pairs.append(i == 0 ? "" : " ")
                    .append(number(points[i]))
                    .append(',')
                    .append(number(points[i + 1]));
        }
        return pairs.toString();
    }

    /** A filled disc. */
    void disc(double x, double y, double radius, String colour) {
        body.append("<circle cx=\"")
                .append(number(x))
                .append("\" cy=\"")
                .append(number(y))
                .append("\" r=\"")
                .append(number(radius))
                .append("\" fill=\"")
                .append(colour)
                .append("\"/>\n");
    }

    /** A frame with round corners. */
    void frame(double x, double y, double wide, double high, String stroke, String fill) {
        body.append("<rect x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" width=\"")
                .append(number(wide))
                .append("\" height=\"")
                .append(number(high))
                .append("\" rx=\"4\" stroke=\"")
                .append(stroke)
                .append("\" fill=\"")
                .append(fill)
                .append("\"/>\n");
    }

    /** A text. */
    void text(double x, double y, String text, Anchor anchor, String colour, boolean bold) {
        body.append("<text x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" text-anchor=\"")
                .append(anchor.name().toLowerCase(Locale.ROOT))
                .append("\" fill=\"")
                .append(colour)
                .append(bold ? "\" font-weight=\"bold" : "")
                .append("\">")
                .append(escaped(text))
                .append("</text>\n");
    }

    /** The whole file. */
    @Override
    public String toString() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
                + number(width) + "\" height=\"" + number(height) + "\" viewBox=\"0 0 " + number(width) + " "
                + number(height) + "\" font-family=\"sans-serif\" font-size=\"" + LETTERS + "\" role=\"img\">\n<title>"
                + escaped(title) + "</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#FFFFFF\"/>\n" + body
                + "</svg>\n";
    }
}
