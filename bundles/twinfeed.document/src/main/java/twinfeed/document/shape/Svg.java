// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.shape;

import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.document.shape.Shape.Box;
import twinfeed.document.shape.Shape.Disc;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.Shape.Line;

/**
 * A picture as SVG 1.1, written shape by shape: black and the tones for a light ground on white, texts as texts, so that they can be
 * searched and read out. Lengths are in CSS pixels, 1/96 inch.
 */
public final class Svg {
    /** Size of running text. */
    public static final int LETTERS = 14;

    /** How wide a letter is on average; a viewer may have another typeface, so that it is taken with room to spare. */
    private static final double AVERAGE = 0.56;

    private static final int WHITE = 0xFF;

    private final StringBuilder body = new StringBuilder();
    private final double width;
    private final double height;
    private final String title;
    private final UnaryOperator<String> families;

    /**
     * An empty picture.
     *
     * @param title what it shows, for screen readers
     */
    public Svg(double width, double height, String title) {
        this(width, height, title, text -> "");
    }

    /**
     * An empty picture whose texts name their typefaces.
     *
     * @param families the typeface of a text; empty for that of the picture
     */
    public Svg(double width, double height, String title, UnaryOperator<String> families) {
        this.width = width;
        this.height = height;
        this.title = title;
        this.families = families;
    }

    /** Colour of a tone. */
    public static String colour(Tone tone) {
        return colour(Ink.of(tone));
    }

    private static String colour(Ink ink) {
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int full = ink.tone().rgb(false) >> shift & WHITE;
            rgb |= (int) Math.round(WHITE + (full - WHITE) * ink.strength()) << shift;
        }
        String digits = Integer.toHexString(rgb);
        return "#" + "0".repeat(6 - digits.length()) + digits;
    }

    /** As much of a text as there is room for; an ellipsis shows what is cut. */
    public static String shortened(String text, double room) {
        int most = (int) (room / (AVERAGE * LETTERS));
        return text.length() <= most
                ? text
                : most < 2 ? "" : text.substring(0, most - 1).stripTrailing() + "\u2026";
    }

    /** About how wide a text is. */
    public static double width(String text) {
        return text.length() * AVERAGE * LETTERS;
    }

    private static String number(double value) {
        double tenths = Math.round(value * 10) / 10.0;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
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

    /** Draws a shape. */
    public void draw(Shape shape) {
        if (shape instanceof Line line) {
            String points = line.points().stream()
                    .map(point -> number(point.x()) + "," + number(point.y()))
                    .collect(Collectors.joining(" "));
            element(
                    "polyline",
                    "points",
                    points,
                    "fill",
                    "none",
                    "stroke",
                    colour(line.ink()),
                    "stroke-width",
                    number(line.thickness()),
                    "stroke-dasharray",
                    line.dashed() ? "4 3" : "");
        } else if (shape instanceof Box box) {
            frame(box);
        } else if (shape instanceof Disc disc) {
            element(
                    "circle",
                    "cx",
                    number(disc.x()),
                    "cy",
                    number(disc.y()),
                    "r",
                    number(disc.radius()),
                    "fill",
                    colour(disc.fill()),
                    "stroke",
                    edge(disc.line()),
                    "stroke-width",
                    disc.line() == null ? "" : number(disc.thickness()));
        } else if (shape instanceof Label label) {
            text(label);
        }
    }

    private static String edge(@Nullable Ink line) {
        return line == null ? "" : colour(line);
    }

    private void frame(Box box) {
        element(
                "rect",
                "x",
                number(box.x()),
                "y",
                number(box.y()),
                "width",
                number(box.width()),
                "height",
                number(box.height()),
                "rx",
                box.radius() > 0 ? number(box.radius()) : "",
                "fill",
                box.fill() == null ? "none" : colour(box.fill()),
                "stroke",
                edge(box.line()),
                "stroke-width",
                box.line() == null ? "" : number(box.thickness()));
    }

    private void element(String name, String... attributes) {
        body.append('<').append(name);
        attributes(attributes);
        body.append("/>\n");
    }

    private void attributes(String... attributes) {
        for (int at = 0; at < attributes.length; at += 2) {
            if (!attributes[at + 1].isEmpty()) {
                body.append(' ')
                        .append(attributes[at])
                        .append("=\"")
                        .append(escaped(attributes[at + 1]))
                        .append('"');
            }
        }
    }

    private void text(Label label) {
        body.append("<text");
        attributes(
                "x",
                number(label.x()),
                "y",
                number(label.y()),
                "text-anchor",
                label.anchor() == Anchor.START ? "" : label.anchor().name().toLowerCase(Locale.ROOT),
                "fill",
                colour(label.tone()),
                "font-family",
                families.apply(label.text()),
                "font-size",
                label.size() == TextSize.NORMAL
                        ? ""
                        : number(LETTERS * label.size().share()),
                "font-weight",
                label.bold() ? "bold" : "");
        body.append('>').append(escaped(label.text())).append("</text>\n");
    }

    /** A straight line. */
    public void line(double x1, double y1, double x2, double y2, String colour, double thickness) {
        element(
                "line",
                "x1",
                number(x1),
                "y1",
                number(y1),
                "x2",
                number(x2),
                "y2",
                number(y2),
                "stroke",
                colour,
                "stroke-width",
                number(thickness));
    }

    /**
     * A line through several points.
     *
     * @param points x and y in turn
     * @param dashes lengths of strokes and gaps; empty for a whole line
     */
    public void curve(double[] points, String colour, String dashes) {
        element(
                "polyline",
                "fill",
                "none",
                "stroke-width",
                "2",
                "stroke",
                colour,
                "stroke-dasharray",
                dashes,
                "points",
                pairs(points));
    }

    /** A filled shape. */
    public void shape(double[] points, String colour) {
        element("polygon", "fill", colour, "points", pairs(points));
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
    public void disc(double x, double y, double radius, String colour) {
        element("circle", "cx", number(x), "cy", number(y), "r", number(radius), "fill", colour);
    }

    /** A text. */
    public void text(double x, double y, String text, Anchor anchor, Tone tone, boolean bold) {
        text(new Label(x, y, text, anchor, TextSize.NORMAL, tone, bold));
    }

    /** Draws shapes in their order, from a point on. */
    public Svg draw(List<Shape> shapes, double x, double y) {
        body.append("<g transform=\"translate(")
                .append(number(x))
                .append(' ')
                .append(number(y))
                .append(")\">\n");
        shapes.forEach(this::draw);
        body.append("</g>\n");
        return this;
    }

    /** The whole file. */
    @Override
    public String toString() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element();
    }

    /** The picture as an element, to stand in another document. */
    public String element() {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + number(width) + "\" height=\"" + number(height)
                + "\" viewBox=\"0 0 " + number(width) + " " + number(height)
                + "\" font-family=\"Arial, Helvetica, Liberation Sans, sans-serif\" font-size=\"" + LETTERS
                + "\" role=\"img\">\n<title>" + escaped(title)
                + "</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#FFFFFF\"/>\n" + body + "</svg>\n";
    }
}
