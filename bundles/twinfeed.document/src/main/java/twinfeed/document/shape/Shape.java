// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.shape;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What drawings are made of. Lengths are in the unit in which the drawing is laid out, from its top left corner. */
public sealed interface Shape {
    /**
     * A colour.
     *
     * @param tone the tone
     * @param strength its share, the rest is the ground: 1 is the full tone, 0 the ground itself
     */
    record Ink(Tone tone, double strength) {
        /** A full tone. */
        public static Ink of(Tone tone) {
            return new Ink(tone, 1);
        }

        /** The ground on which is drawn. */
        public static final Ink GROUND = new Ink(Tone.INK, 0);
    }

    /**
     * A point.
     *
     * @param x from the left
     * @param y from the top
     */
    record Point(double x, double y) {}

    /**
     * A line through points.
     *
     * @param points two or more
     * @param ink its colour
     * @param thickness its thickness
     * @param dashed whether it is broken
     */
    record Line(List<Point> points, Ink ink, double thickness, boolean dashed) implements Shape {
        public Line {
            points = List.copyOf(points);
        }
    }

    /**
     * A rectangle.
     *
     * @param x left edge
     * @param y upper edge
     * @param width its width
     * @param height its height
     * @param radius radius of its corners
     * @param line colour of its edge; none without an edge
     * @param thickness thickness of its edge
     * @param fill colour of its area; none if what lies below shows
     */
    record Box(
            double x,
            double y,
            double width,
            double height,
            double radius,
            @Nullable Ink line,
            double thickness,
            @Nullable Ink fill)
            implements Shape {}

    /**
     * A disc.
     *
     * @param x of its centre
     * @param y of its centre
     * @param radius its radius
     * @param line colour of its edge; none without an edge
     * @param thickness thickness of its edge
     * @param fill colour of its area
     */
    record Disc(double x, double y, double radius, @Nullable Ink line, double thickness, Ink fill) implements Shape {}

    /**
     * A text on one line.
     *
     * @param x of its anchor
     * @param y of its base line
     * @param text the text
     * @param anchor what of it stands there
     * @param size size of its letters
     * @param tone its colour
     * @param bold whether it is bold
     */
    record Label(double x, double y, String text, Anchor anchor, TextSize size, Tone tone, boolean bold)
            implements Shape {
        /** The same with another text. */
        public Label with(String other) {
            return new Label(x, y, other, anchor, size, tone, bold);
        }
    }
}
