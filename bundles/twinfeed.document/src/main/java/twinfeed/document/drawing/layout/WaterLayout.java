// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.PieceKind;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.Shape.Disc;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Line;
import twinfeed.document.shape.Shape.Point;
import twinfeed.document.shape.TextSize;
import twinfeed.document.shape.Tone;

/** The water in the section, from the main outside the house to the unit. */
final class WaterLayout {
    private static final double TAP_STEP = 1.7;
    private static final double STUB = 1.1;

    private final DrawingSheet sheet;
    private final DrawnPiece main;
    private final List<DrawnPiece> pipes;
    private final List<DrawnPiece> taps;
    private final Chips chips;
    private final SectionFrame frame;
    private final double[] ends;

    WaterLayout(DrawingSheet sheet, List<DrawnPiece> water, Chips chips, SectionFrame frame) {
        this.sheet = sheet;
        this.main = water.get(0);
        this.pipes = Heights.only(water, PieceKind.PIPE);
        this.taps = Heights.only(water, PieceKind.TAP);
        this.chips = chips;
        this.frame = frame;
        double last = sheet.em(1.2 + TAP_STEP * tapsAt(pipes.size()));
        this.ends = PieceSpacing.over(
                pipes, frame.left() - sheet.em(1.6), frame.unit().x() - last);
    }

    private long tapsAt(int tee) {
        return taps.stream().filter(tap -> tap.extent().tee() == tee).count();
    }

    private double y(int node) {
        return frame.y(frame.heights().nodes()[node]);
    }

    void draw() {
        lines();
        for (int i = 0; i < pipes.size(); i++) {
            fittings(i);
        }
        chips.put(main, ends[0], y(0), sheet.em(6));
        for (int i = 0; i < pipes.size(); i++) {
            double room = ends[i + 1] - ends[i] - sheet.em(i == 0 ? 1.6 : 0.6);
            double middle = (ends[i] + ends[i + 1]) / 2 + (i == 0 ? sheet.em(0.5) : 0);
            chips.put(pipes.get(i), middle, y(i), room);
        }
        taps();
        for (int i = 0; i < pipes.size() - 1; i++) {
            node(ends[i + 1], y(i + 1), pipes.get(i).reading(), y(i + 1) < y(i));
        }
        if (!main.reading().isEmpty() && !pipes.isEmpty()) {
            atTheMain(ends[0], y(0));
        }
        for (int i = 0; i < pipes.size(); i++) {
            detail(pipes.get(i), ends[i], ends[i + 1], y(i));
        }
    }

    private void lines() {
        for (int i = 0; i < pipes.size(); i++) {
            pipe(
                    pipes.get(i),
                    new Point(ends[i], y(i)),
                    new Point(ends[i + 1], y(i)),
                    new Point(ends[i + 1], y(i + 1)));
        }
        int last = pipes.size();
        Point inlet = new Point(frame.unit().x(), y(last));
        if (pipes.isEmpty()) {
            sheet.line(Ink.of(Tone.WATER), sheet.em(0.15), true, new Point(ends[0], y(0)), inlet);
        } else {
            pipe(pipes.get(last - 1), new Point(ends[last], y(last)), inlet);
        }
        for (int i = 1; i <= last; i++) {
            sheet.add(new Disc(ends[i], y(i), sheet.em(0.25), null, 0, Ink.of(Tone.WATER)));
        }
    }

    private void pipe(DrawnPiece piece, Point... points) {
        Strokes.piece(sheet, piece, Tone.WATER, points);
    }

    /** A stroke across the pipe for each fitting, as many as there is room for. */
    private void fittings(int pipe) {
        double from = ends[pipe] + sheet.em(0.7);
        double step = sheet.em(0.45);
        int room = (int) Math.floor(((ends[pipe + 1] - ends[pipe]) / 2 - sheet.em(2.2)) / step);
        int shown = Math.min(pipes.get(pipe).extent().fittings(), room);
        for (int i = 0; i < shown; i++) {
            double x = from + i * step;
            sheet.add(new Line(
                    List.of(new Point(x, y(pipe) - sheet.em(0.3)), new Point(x, y(pipe) + sheet.em(0.3))),
                    Ink.of(Tone.WATER),
                    sheet.em(0.09),
                    false));
        }
    }

    /** Where a tap is drawn: its stem, and whether its outlet lies above the pipe. */
    private record Stem(DrawnPiece tap, double x, double end, boolean up) {}

    /** All stems before any name, which keeps clear of them. */
    private void taps() {
        int[] before = new int[pipes.size() + 1];
        List<Stem> stems = new ArrayList<>();
        for (int i = 0; i < taps.size(); i++) {
            int tee = taps.get(i).extent().tee();
            stems.add(stem(taps.get(i), frame.y(frame.heights().taps()[i]), tee, ++before[tee]));
        }
        for (Stem stem : stems) {
            chips.put(stem.tap(), stem.x(), plate(stem), sheet.em(5));
        }
        for (Stem stem : stems) {
            String name = stem.tap().name();
            double base = plate(stem) + sheet.em(0.3);
            double beside = chips.fullWidth(stem.tap()) / 2 + sheet.em(0.35);
            sheet.writeWhereFree(List.of(
                    sheet.small(stem.x() + beside, base, name, Anchor.START, Tone.QUIET),
                    sheet.small(stem.x() - beside, base, name, Anchor.END, Tone.QUIET)));
        }
    }

    private double plate(Stem stem) {
        return stem.end() + (stem.up() ? -sheet.em(0.85) : sheet.em(0.85));
    }

    private Stem stem(DrawnPiece tap, double outlet, int tee, int number) {
        double next = tee < pipes.size() ? ends[tee + 1] : frame.unit().x();
        double step = Math.min(sheet.em(TAP_STEP), (next - ends[tee]) / (tapsAt(tee) + 1));
        // What has no length is no pipe, and a tap that is fed ahead of it must not seem to draw on it.
        boolean ahead = tee < pipes.size()
                && Double.valueOf(0).equals(pipes.get(tee).extent().lengthM());
        double x = ends[tee] + (ahead ? number - 1 : number) * step;
        boolean up = tap.extent().riseM() == null || outlet <= y(tee);
        double reach = Math.max(sheet.em(STUB), Math.abs(outlet - y(tee)));
        double end = y(tee) + (up ? -reach : reach);
        Ink ink = Ink.of(Tone.WATER);
        sheet.line(ink, sheet.em(0.1), false, new Point(x, y(tee)), new Point(x, end));
        sheet.line(ink, sheet.em(0.16), false, new Point(x - sheet.em(0.45), end), new Point(x + sheet.em(0.45), end));
        return new Stem(tap, x, end, up);
    }

    private void node(double x, double y, String reading, boolean rises) {
        double off = sheet.em(0.45);
        double above = y - sheet.em(0.5);
        double below = y + sheet.em(1.15);
        var rightBelow = sheet.small(x + off, below, reading, Anchor.START, Tone.WATER);
        var leftAbove = sheet.small(x - off, above, reading, Anchor.END, Tone.WATER);
        var rightAbove = sheet.small(x + off, above, reading, Anchor.START, Tone.WATER);
        var leftBelow = sheet.small(x - off, below, reading, Anchor.END, Tone.WATER);
        sheet.writeWhereFree(
                rises
                        ? List.of(leftAbove, rightBelow, rightAbove, leftBelow)
                        : List.of(rightBelow, leftBelow, rightAbove, leftAbove));
    }

    /** The plate of the main stands at the start of the pipes; its reading keeps clear of it. */
    private void atTheMain(double x, double y) {
        double inside = Math.max(x + chips.fullWidth(main) / 2, frame.left()) + sheet.em(0.35);
        sheet.writeWhereFree(List.of(
                sheet.small(x, y + sheet.em(1.75), main.reading(), Anchor.MIDDLE, Tone.WATER),
                sheet.small(x, y - sheet.em(1.05), main.reading(), Anchor.MIDDLE, Tone.WATER),
                sheet.small(inside, y - sheet.em(1.05), main.reading(), Anchor.START, Tone.WATER)));
    }

    private void detail(DrawnPiece pipe, double from, double to, double y) {
        if (sheet.width(pipe.detail(), TextSize.SMALL, false) <= to - from) {
            double middle = (from + to) / 2;
            sheet.writeWhereFree(List.of(
                    sheet.small(middle, y + sheet.em(1.65), pipe.detail(), Anchor.MIDDLE, Tone.QUIET),
                    sheet.small(middle, y - sheet.em(0.95), pipe.detail(), Anchor.MIDDLE, Tone.QUIET)));
        }
    }
}
