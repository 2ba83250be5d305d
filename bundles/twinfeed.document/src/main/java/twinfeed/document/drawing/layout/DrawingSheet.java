// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.Shape;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.Shape.Line;
import twinfeed.document.shape.Shape.Point;
import twinfeed.document.shape.TextSize;
import twinfeed.document.shape.TextWidth;
import twinfeed.document.shape.Tone;

/** A drawing being made; it knows which places are taken, so that no text is put over another or over a line. */
final class DrawingSheet {
    /** How far letters reach above and below their base line, as shares of their size. */
    private static final double ABOVE = 0.82;

    private static final double BELOW = 0.26;

    private static final String ELLIPSIS = "\u2026";

    private final double width;
    private final double letters;
    private final TextWidth widths;
    private final List<Shape> ground = new ArrayList<>();
    private final List<Shape> shapes = new ArrayList<>();
    private final List<HousePicture.Target> targets = new ArrayList<>();
    private final List<Area> texts = new ArrayList<>();
    private final List<Area> strokes = new ArrayList<>();

    DrawingSheet(double width, double letters, TextWidth widths) {
        this.width = width;
        this.letters = letters;
        this.widths = widths;
    }

    double width() {
        return width;
    }

    /** A length in sizes of letters. */
    double em(double sizes) {
        return sizes * letters;
    }

    double width(String text, TextSize size, boolean bold) {
        return widths.of(text, size, bold);
    }

    /** As much of a text as there is room for; an ellipsis shows what is cut, and where there is none for three letters nothing is left. */
    String shortened(String text, double room, TextSize size, boolean bold) {
        if (width(text, size, bold) <= room) {
            return text;
        }
        int low = 0;
        int high = text.length();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (width(cut(text, middle), size, bold) <= room) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low < 3 ? "" : cut(text, low);
    }

    private static String cut(String text, int length) {
        int end = length > 0 && Character.isHighSurrogate(text.charAt(length - 1)) ? length - 1 : length;
        return text.substring(0, end).stripTrailing() + ELLIPSIS;
    }

    /** The place that a text takes. */
    Area area(Label label) {
        double wide = width(label.text(), label.size(), label.bold());
        double high = letters * label.size().share();
        return new Area(
                label.x() - wide * label.anchor().share(), label.y() - ABOVE * high, wide, (ABOVE + BELOW) * high);
    }

    /** Writes a text where it has to stand. */
    void write(Label label) {
        if (!label.text().isEmpty()) {
            shapes.add(label);
            texts.add(area(label));
        }
    }

    Label small(double x, double y, String text, Anchor anchor, Tone tone) {
        return new Label(x, y, text, anchor, TextSize.SMALL, tone, false);
    }

    /** Writes a text at the first of some places where nothing else stands; nowhere if all are taken. */
    void writeWhereFree(List<Label> places) {
        for (Label place : places) {
            if (!place.text().isEmpty() && free(area(place)) && clear(area(place))) {
                write(place);
                return;
            }
        }
    }

    /** Whether a place is on the sheet and no text stands there. */
    boolean free(Area area) {
        return area.x() >= 0
                && area.x() + area.width() <= width
                && texts.stream().noneMatch(taken -> taken.overlaps(area));
    }

    private boolean clear(Area area) {
        return strokes.stream().noneMatch(taken -> taken.overlaps(area));
    }

    /** Keeps texts away from a place. */
    void take(Area area) {
        texts.add(area);
    }

    /** Keeps texts that have a choice away from a place. */
    void avoid(Area area) {
        strokes.add(area);
    }

    /** A text over at most two lines, small; what there is no room for is cut. */
    List<String> lines(String text, double room, boolean bold) {
        String first = text;
        int end = text.length();
        while (width(first, TextSize.SMALL, bold) > room && text.lastIndexOf(' ', end - 1) > 0) {
            end = text.lastIndexOf(' ', end - 1);
            first = text.substring(0, end);
        }
        String rest = text.substring(end).strip();
        return rest.isEmpty()
                ? List.of(shortened(first, room, TextSize.SMALL, bold))
                : List.of(first, shortened(rest, room, TextSize.SMALL, bold));
    }

    /** A line that texts keep away from. */
    void line(Ink ink, double thickness, boolean dashed, Point... points) {
        shapes.add(new Line(List.of(points), ink, thickness, dashed));
        for (int i = 1; i < points.length; i++) {
            Point from = points[i - 1];
            Point to = points[i];
            strokes.add(new Area(
                    Math.min(from.x(), to.x()) - thickness / 2,
                    Math.min(from.y(), to.y()) - thickness / 2,
                    Math.abs(to.x() - from.x()) + thickness,
                    Math.abs(to.y() - from.y()) + thickness));
        }
    }

    /** A shape above those before it. */
    void add(Shape shape) {
        shapes.add(shape);
    }

    /** A shape below everything else. */
    void below(Shape shape) {
        ground.add(shape);
    }

    /** Where a piece is seen. */
    void target(Area area, DrawnPiece piece) {
        targets.add(new HousePicture.Target(area, piece));
    }

    /** Writes a text over as many lines as it needs; the answer is where the next line would be. */
    double paragraph(double x, double top, double room, String text, Tone tone) {
        double y = top;
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, TextSize.SMALL, false) > room) {
                write(small(x, y + em(0.8), line.toString(), Anchor.START, tone));
                y += em(1.15);
                line = new StringBuilder(word);
            } else {
                line = new StringBuilder(longer);
            }
        }
        write(small(x, y + em(0.8), shortened(line.toString(), room, TextSize.SMALL, false), Anchor.START, tone));
        return y + em(1.15);
    }

    HousePicture finished(double height, Map<DrawnPiece, String> names) {
        List<Shape> all = new ArrayList<>(ground);
        all.addAll(shapes);
        List<HousePicture.Target> upper = new ArrayList<>(targets);
        Collections.reverse(upper);
        return new HousePicture(width, height, all, upper, names);
    }
}
