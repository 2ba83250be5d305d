// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.PieceKind;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.Shape.Box;
import twinfeed.document.shape.Shape.Disc;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Point;
import twinfeed.document.shape.TextSize;
import twinfeed.document.shape.Tone;

/** The electrical supply in the section: service fuse, consumer unit with its devices, cable, isolator and down to the unit. */
final class PowerLayout {
    private static final double LEAST_STEP = 3.1;

    private final DrawingSheet sheet;
    private final List<DrawnPiece> power;
    private final List<DrawnPiece> cables;
    private final Chips chips;
    private final SectionFrame frame;

    PowerLayout(DrawingSheet sheet, List<DrawnPiece> power, Chips chips, SectionFrame frame) {
        this.sheet = sheet;
        this.power = power;
        this.cables = Heights.only(power, PieceKind.CABLE);
        this.chips = chips;
        this.frame = frame;
    }

    private DrawnPiece one(PieceKind kind) {
        return Heights.only(power, kind).get(0);
    }

    void draw() {
        double y = frame.cable();
        double fuse = frame.left() + sheet.em(1.6);
        double step = step();
        double device = fuse + step;
        double rcd = device + step;
        double inner = step * 0.48;
        double left =
                Math.min(inner, Math.max(sheet.em(1.3), chips.fullWidth(one(PieceKind.DEVICE)) / 2 + sheet.em(0.3)));
        double right = Math.max(sheet.em(1.3), Math.min(step, chips.fullWidth(one(PieceKind.RCD))) / 2 + sheet.em(0.3));
        double from = rcd + right + sheet.em(0.5);
        double isolator = frame.unit().x() - sheet.em(0.4);
        double to = isolator - sheet.em(1.5);
        Ink ink = Ink.of(Tone.POWER);
        double thick = sheet.em(0.17);
        sheet.line(ink, thick, false, new Point(fuse, y), new Point(from, y));
        cables(from, to);
        sheet.line(
                ink,
                thick,
                false,
                new Point(to, y),
                new Point(frame.unitMiddle(), y),
                new Point(frame.unitMiddle(), frame.unit().y()));
        sheet.avoid(new Area(device - left, y - sheet.em(1), rcd - device + left + right, sheet.em(2)));
        sheet.add(new Box(
                device - left,
                y - sheet.em(1),
                rcd - device + left + right,
                sheet.em(2),
                sheet.em(0.2),
                new Ink(Tone.POWER, 0.6),
                sheet.em(0.07),
                new Ink(Tone.POWER, 0.08)));
        sheet.line(ink, thick, false, new Point(device - left, y), new Point(rcd + right, y));
        double room = step - sheet.em(0.2);
        chips.put(one(PieceKind.FUSE), fuse, y, room);
        chips.put(one(PieceKind.DEVICE), device, y, room);
        chips.put(one(PieceKind.RCD), rcd, y, room);
        chips.put(one(PieceKind.ISOLATOR), isolator, y, sheet.em(2.8));
        below(one(PieceKind.FUSE), fuse, step);
        below(one(PieceKind.DEVICE), device, step);
        below(one(PieceKind.ISOLATOR), isolator, sheet.em(6));
        cableTexts(from, to);
    }

    /** As far from one device to the next as their plates need, while half of the way is left for the cable. */
    private double step() {
        double widest = power.stream()
                .filter(piece -> piece.kind() != PieceKind.CABLE && piece.kind() != PieceKind.ISOLATOR)
                .mapToDouble(
                        piece -> Math.max(chips.fullWidth(piece), sheet.width(piece.detail(), TextSize.SMALL, false)))
                .max()
                .orElse(0);
        double room = (frame.unit().x() - frame.left()) / 6.5;
        return Math.max(sheet.em(2.2), Math.min(Math.max(sheet.em(LEAST_STEP), widest + sheet.em(0.5)), room));
    }

    private void below(DrawnPiece piece, double x, double room) {
        if (sheet.width(piece.detail(), TextSize.SMALL, false) <= room) {
            sheet.writeWhereFree(List.of(
                    sheet.small(x, frame.cable() + sheet.em(1.95), piece.detail(), Anchor.MIDDLE, Tone.QUIET),
                    sheet.small(x, frame.cable() - sheet.em(1.15), piece.detail(), Anchor.MIDDLE, Tone.QUIET)));
        }
    }

    private double level(int cable) {
        return cable >= 0 && cable < cables.size() && cables.get(cable).extent().loft() ? frame.loft() : frame.cable();
    }

    private void cables(double from, double to) {
        double[] ends = PieceSpacing.over(cables, from, to);
        if (cables.isEmpty()) {
            sheet.line(
                    Ink.of(Tone.POWER),
                    sheet.em(0.17),
                    true,
                    new Point(from, frame.cable()),
                    new Point(to, frame.cable()));
        }
        for (int i = 0; i < cables.size(); i++) {
            List<Point> points = new ArrayList<>();
            if (level(i - 1) != level(i)) {
                points.add(new Point(ends[i], level(i - 1)));
            }
            points.add(new Point(ends[i], level(i)));
            points.add(new Point(ends[i + 1], level(i)));
            if (i == cables.size() - 1 && level(i) != frame.cable()) {
                points.add(new Point(ends[i + 1], frame.cable()));
            }
            Strokes.piece(sheet, cables.get(i), Tone.POWER, points.toArray(new Point[0]));
        }
        for (int i = 0; i < ends.length; i++) {
            double y = level(i == 0 ? -1 : i - 1);
            sheet.add(new Disc(ends[i], y, sheet.em(0.25), null, 0, Ink.of(Tone.POWER)));
        }
    }

    private void cableTexts(double from, double to) {
        double[] ends = PieceSpacing.over(cables, from, to);
        for (int i = 0; i < cables.size(); i++) {
            chips.put(cables.get(i), (ends[i] + ends[i + 1]) / 2, level(i), ends[i + 1] - ends[i] - sheet.em(0.7));
        }
        node(ends[0], frame.cable(), one(PieceKind.RCD).reading());
        for (int i = 0; i < cables.size(); i++) {
            boolean last = i == cables.size() - 1;
            node(ends[i + 1], last ? frame.cable() : level(i), cables.get(i).reading());
        }
        for (int i = 0; i < cables.size(); i++) {
            DrawnPiece cable = cables.get(i);
            if (sheet.width(cable.detail(), TextSize.SMALL, false) <= ends[i + 1] - ends[i]) {
                double middle = (ends[i] + ends[i + 1]) / 2;
                sheet.writeWhereFree(List.of(
                        sheet.small(middle, level(i) - sheet.em(0.95), cable.detail(), Anchor.MIDDLE, Tone.QUIET),
                        sheet.small(middle, level(i) + sheet.em(1.7), cable.detail(), Anchor.MIDDLE, Tone.QUIET)));
            }
        }
    }

    private void node(double x, double y, String reading) {
        double below = y + sheet.em(1.25);
        double above = y - sheet.em(0.55);
        double off = sheet.em(0.4);
        sheet.writeWhereFree(List.of(
                sheet.small(x, below, reading, Anchor.MIDDLE, Tone.POWER),
                sheet.small(x + off, below, reading, Anchor.START, Tone.POWER),
                sheet.small(x - off, below, reading, Anchor.END, Tone.POWER),
                sheet.small(x - off, above, reading, Anchor.END, Tone.POWER),
                sheet.small(x + off, above, reading, Anchor.START, Tone.POWER)));
    }
}
