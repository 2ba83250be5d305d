// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.List;
import twinfeed.document.DocumentTexts;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.Shape.Box;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.TextSize;
import twinfeed.document.shape.Tone;

/** A row for each piece: water and power side by side where there is room, one below the other where there is not, and the unit last. */
final class RowsLayout {
    private static final double ROW = 1.6;
    private static final double GAP = 0.8;

    /** In a narrower sheet the supplies stand one below the other, in letters. */
    private static final double SIDE_BY_SIDE = 34;

    /** What a name is given at least before a reading takes its room. */
    private static final double LEAST_NAME = 7;

    private final DrawingSheet sheet;
    private final HouseDrawing drawing;
    private final Chips chips;
    private final DocumentTexts words;

    RowsLayout(DrawingSheet sheet, HouseDrawing drawing, Chips chips, DocumentTexts words) {
        this.sheet = sheet;
        this.drawing = drawing;
        this.chips = chips;
        this.words = words;
    }

    /** Draws the rows; the answer is where they end. */
    double draw(double top) {
        double wide = sheet.width();
        double bottom;
        if (wide >= sheet.em(SIDE_BY_SIDE)) {
            double half = (wide - sheet.em(GAP)) / 2;
            bottom = Math.max(
                    column("water", Tone.WATER, drawing.water(), 0, top, half),
                    column("power", Tone.POWER, drawing.power(), half + sheet.em(GAP), top, half));
        } else {
            double between = column("water", Tone.WATER, drawing.water(), 0, top, wide);
            bottom = column("power", Tone.POWER, drawing.power(), 0, between, wide);
        }
        double unit = bottom + sheet.em(0.2);
        sheet.below(new Box(
                sheet.em(0.05),
                unit,
                wide - sheet.em(0.1),
                sheet.em(ROW),
                sheet.em(0.25),
                new Ink(Tone.INK, 0.45),
                1,
                new Ink(Tone.INK, 0.07)));
        row(drawing.unit(), sheet.em(0.4), unit, wide - sheet.em(0.8));
        return unit + sheet.em(ROW + 0.2);
    }

    private double column(String head, Tone tone, List<DrawnPiece> pieces, double x, double top, double wide) {
        sheet.write(new Label(x, top + sheet.em(1.1), words.get(head), Anchor.START, TextSize.NORMAL, tone, true));
        double y = top + sheet.em(ROW);
        for (DrawnPiece piece : pieces) {
            row(piece, x, y, wide);
            y += sheet.em(ROW);
        }
        return y;
    }

    private void row(DrawnPiece piece, double x, double y, double wide) {
        Area area = new Area(x, y, wide, sheet.em(ROW));
        sheet.target(area, piece);
        if (piece.binding()) {
            sheet.add(new Box(
                    area.x() + sheet.em(0.05),
                    area.y() + sheet.em(0.05),
                    area.width() - sheet.em(0.1),
                    area.height() - sheet.em(0.1),
                    sheet.em(0.3),
                    Ink.of(Chips.tone(piece)),
                    sheet.em(0.15),
                    null));
        }
        double base = y + sheet.em(1.12);
        double left = x + sheet.em(0.3);
        String name = chips.name(piece);
        if (!name.isEmpty()) {
            double plate = chips.width(name);
            chips.plate(piece, name, new Area(left, y + sheet.em(0.17), plate, sheet.em(ROW - 0.34)), piece.binding());
            left += Math.max(plate, sheet.em(1.6)) + sheet.em(0.4);
        }
        double right = verdict(piece, x + wide - sheet.em(0.4), base, left);
        texts(piece, left, right, base);
    }

    /** Sign and margin at the right, and in words whether it decides; the answer is where they begin. */
    private double verdict(DrawnPiece piece, double right, double base, double left) {
        Mark mark = piece.mark();
        if (mark == null) {
            return right;
        }
        String full = piece.binding() ? words.get("decides") + " " + piece.verdict() : piece.verdict();
        String text = sheet.shortened(full, (right - left) * 0.85, TextSize.NORMAL, piece.binding());
        sheet.write(new Label(right, base, text, Anchor.END, TextSize.NORMAL, mark.tone(), piece.binding()));
        return right - sheet.width(text, TextSize.NORMAL, piece.binding()) - sheet.em(0.6);
    }

    /** As many parts of a detail as there is room for. */
    private String fitting(String detail, double room) {
        String fits = detail;
        while (sheet.width(fits, TextSize.NORMAL, false) > room) {
            int end = fits.lastIndexOf(", ");
            if (end < 0) {
                return "";
            }
            fits = fits.substring(0, end);
        }
        return fits;
    }

    private void texts(DrawnPiece piece, double left, double end, double base) {
        double right = end;
        double reading = sheet.width(piece.reading(), TextSize.NORMAL, false);
        if (!piece.reading().isEmpty() && right - left - reading >= sheet.em(LEAST_NAME)) {
            sheet.write(
                    new Label(right, base, piece.reading(), Anchor.END, TextSize.NORMAL, Chips.supply(piece), false));
            right -= reading + sheet.em(0.6);
        }
        String name = sheet.shortened(piece.title(), right - left, TextSize.NORMAL, piece.binding());
        sheet.write(new Label(left, base, name, Anchor.START, TextSize.NORMAL, Tone.INK, piece.binding()));
        double from = left + sheet.width(name, TextSize.NORMAL, piece.binding()) + sheet.em(0.5);
        String detail = fitting(piece.detail(), right - from);
        sheet.write(new Label(from, base, detail, Anchor.START, TextSize.NORMAL, Tone.QUIET, false));
    }
}
