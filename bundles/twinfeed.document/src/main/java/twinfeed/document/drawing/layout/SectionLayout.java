// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.PieceKind;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.Shape.Box;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.Shape.Line;
import twinfeed.document.shape.Shape.Point;
import twinfeed.document.shape.TextSize;
import twinfeed.document.shape.Tone;

/**
 * A section through the house: the water at the heights that were surveyed, the cable above it, which has none, in the loft where it
 * lies there, and the unit at which both end.
 */
final class SectionLayout {
    /** How high the part with the pipes is, as a share of the width and in letters. */
    private static final double WATER_SHARE = 0.16;

    private static final double LEAST_WATER = 6.5;
    private static final double MOST_WATER = 15;
    private static final double LEVEL_WATER = 3;

    private static final double UNIT_SHARE = 0.22;
    private static final double LEAST_UNIT = 7;
    private static final double LINE = 1.2;

    private final DrawingSheet sheet;
    private final HouseDrawing drawing;
    private final Chips chips;
    private List<String> titleLines = List.of();

    SectionLayout(DrawingSheet sheet, HouseDrawing drawing, Chips chips) {
        this.sheet = sheet;
        this.drawing = drawing;
        this.chips = chips;
    }

    /** Draws it; the answer is where it ends. */
    double draw(double top) {
        List<DrawnPiece> pipes = Heights.only(drawing.water(), PieceKind.PIPE);
        List<DrawnPiece> taps = Heights.only(drawing.water(), PieceKind.TAP);
        Heights heights = Heights.of(pipes, taps);
        List<String> unit = unitTexts();
        SectionFrame frame = frame(top, heights, unit);
        house(frame);
        scale(frame);
        sheet.take(frame.unit());
        new PowerLayout(sheet, drawing.power(), chips, frame).draw();
        new WaterLayout(sheet, drawing.water(), chips, frame).draw();
        unit(frame, unit);
        return frame.lowest() + sheet.em(2.4);
    }

    private SectionFrame frame(double top, Heights heights, List<String> unit) {
        boolean loft = drawing.power().stream().anyMatch(piece -> piece.extent().loft());
        double ridge = top + sheet.em(0.2);
        double inLoft = ridge + sheet.em(2.2);
        double eaves = loft ? inLoft + sheet.em(2.1) : ridge + sheet.em(1.2);
        double cable = eaves + sheet.em(2.3);
        double highest = cable + sheet.em(3.9);
        boolean level = heights.highest() - heights.lowest() < 1e-6;
        double water = level
                ? sheet.em(LEVEL_WATER)
                : Math.max(sheet.em(LEAST_WATER), Math.min(sheet.em(MOST_WATER), sheet.width() * WATER_SHARE));
        double lowest = highest + water;
        double scale = heights.surveyed().stream()
                .mapToDouble(height -> sheet.width(height(height), TextSize.SMALL, false))
                .max()
                .orElse(-sheet.em(0.6));
        double left = scale + sheet.em(3.8);
        double right = sheet.width() - sheet.em(0.3);
        SectionFrame open = new SectionFrame(
                left, right, ridge, inLoft, eaves, cable, highest, lowest, new Area(0, 0, 0, 0), heights);
        double wide = Math.max(
                sheet.em(LEAST_UNIT),
                Math.min(
                        sheet.width() * UNIT_SHARE,
                        unit.stream()
                                        .mapToDouble(text -> sheet.width(text, TextSize.SMALL, true))
                                        .max()
                                        .orElse(0)
                                + sheet.em(0.9)));
        double high = sheet.em(LINE * unit.size() + 0.5);
        double inlet = open.y(heights.unit());
        // The box holds its inlet and keeps below the cable and above the lowest edge.
        double upper = Math.max(cable + sheet.em(1.6), Math.min(inlet - high / 2, lowest + sheet.em(1.2) - high));
        return new SectionFrame(
                left,
                right,
                ridge,
                inLoft,
                eaves,
                cable,
                highest,
                lowest,
                new Area(right - sheet.em(0.6) - wide, upper, wide, high),
                heights);
    }

    private List<String> unitTexts() {
        DrawnPiece piece = drawing.unit();
        List<String> texts = new ArrayList<>();
        double room = Math.max(sheet.em(LEAST_UNIT), sheet.width() * UNIT_SHARE) - sheet.em(0.9);
        titleLines = sheet.lines(piece.title(), room, true);
        texts.addAll(titleLines);
        Stream.of(piece.reading().split(", ")).filter(text -> !text.isEmpty()).forEach(texts::add);
        return texts;
    }

    private void unit(SectionFrame frame, List<String> texts) {
        Area box = frame.unit();
        DrawnPiece piece = drawing.unit();
        boolean marked = piece.binding();
        sheet.add(new Box(
                box.x(),
                box.y(),
                box.width(),
                box.height(),
                sheet.em(0.3),
                marked ? Ink.of(Chips.tone(piece)) : new Ink(Tone.INK, 0.7),
                sheet.em(marked ? 0.2 : 0.1),
                Ink.GROUND));
        sheet.target(box, piece);
        double y = box.y() + sheet.em(LINE);
        for (int i = 0; i < texts.size(); i++) {
            boolean title = i < titleLines.size();
            Tone tone = title ? Tone.INK : texts.get(i).endsWith("V") ? Tone.POWER : Tone.WATER;
            String text = sheet.shortened(texts.get(i), box.width() - sheet.em(0.6), TextSize.SMALL, title);
            sheet.write(new Label(frame.unitMiddle(), y, text, Anchor.MIDDLE, TextSize.SMALL, tone, title));
            y += sheet.em(LINE);
        }
    }

    private void house(SectionFrame frame) {
        double ground = frame.y(0);
        double inset = (frame.eaves() - frame.roof()) * 0.9;
        Ink wall = new Ink(Tone.INK, 0.35);
        double thick = sheet.em(0.12);
        double overhang = sheet.em(0.5);
        sheet.below(new Line(
                List.of(
                        new Point(frame.left() - overhang, frame.eaves()),
                        new Point(frame.left() + inset, frame.roof()),
                        new Point(frame.right() - inset, frame.roof()),
                        new Point(frame.right(), frame.eaves())),
                wall,
                thick,
                false));
        sheet.below(new Line(
                List.of(
                        new Point(frame.left(), ground),
                        new Point(frame.left(), frame.eaves()),
                        new Point(frame.right(), frame.eaves()),
                        new Point(frame.right(), ground)),
                wall,
                thick,
                false));
        double from = frame.left() - sheet.em(3);
        sheet.avoid(new Area(from, ground, frame.right() - from, sheet.em(0.4)));
        Ink earth = new Ink(Tone.INK, 0.25);
        sheet.below(new Line(
                List.of(new Point(from, ground), new Point(frame.right(), ground)),
                new Ink(Tone.INK, 0.5),
                sheet.em(0.1),
                false));
        for (double x = from + sheet.em(0.4); x < frame.right(); x += sheet.em(1.8)) {
            sheet.below(new Line(
                    List.of(new Point(x, ground), new Point(x - sheet.em(0.4), ground + sheet.em(0.4))),
                    earth,
                    sheet.em(0.06),
                    false));
        }
    }

    /** Marks of the heights that were surveyed, the start first, then from above, as far as they are clear of one another. */
    private void scale(SectionFrame frame) {
        double x = frame.left() - sheet.em(3);
        List<Double> heights = new ArrayList<>(frame.heights().surveyed());
        heights.sort((one, other) -> one == 0 ? -1 : other == 0 ? 1 : Double.compare(other, one));
        for (double height : heights) {
            double y = frame.y(height);
            Label label = sheet.small(x - sheet.em(0.4), y + sheet.em(0.3), height(height), Anchor.END, Tone.QUIET);
            if (sheet.free(sheet.area(label))) {
                sheet.write(label);
                sheet.below(new Line(
                        List.of(new Point(x - sheet.em(0.2), y), new Point(x + sheet.em(0.2), y)),
                        new Ink(Tone.INK, 0.5),
                        sheet.em(0.08),
                        false));
            }
        }
        if (!heights.isEmpty()) {
            sheet.below(new Line(
                    List.of(
                            new Point(x, frame.y(frame.heights().highest())),
                            new Point(x, frame.y(frame.heights().lowest()))),
                    new Ink(Tone.INK, 0.5),
                    sheet.em(0.06),
                    false));
        }
    }

    private String height(double metres) {
        return chips.height(metres);
    }
}
