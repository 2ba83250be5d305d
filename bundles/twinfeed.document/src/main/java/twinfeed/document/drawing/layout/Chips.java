// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import twinfeed.document.DocumentTexts;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.Mark;
import twinfeed.document.drawing.PieceKind;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.Shape.Box;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.TextSize;
import twinfeed.document.shape.Tone;

/**
 * The small plates by which a piece is known in the section and in its row: a number on the water, a letter on the cable, with the sign
 * of what was found unless it is well, and in words whether it decides and whether it is new.
 */
final class Chips {
    private static final int LETTERS = 26;
    private static final double HIGH = 1.3;

    private final DrawingSheet sheet;
    private final DocumentTexts words;
    private final Map<DrawnPiece, String> names = new IdentityHashMap<>();

    Chips(DrawingSheet sheet, HouseDrawing drawing, DocumentTexts words) {
        this.sheet = sheet;
        this.words = words;
        for (int i = 0; i < drawing.water().size(); i++) {
            names.put(drawing.water().get(i), String.valueOf(i + 1));
        }
        for (int i = 0; i < drawing.power().size(); i++) {
            String more = i < LETTERS ? "" : String.valueOf(i / LETTERS);
            names.put(drawing.power().get(i), (char) ('A' + i % LETTERS) + more);
        }
    }

    Map<DrawnPiece, String> names() {
        return names;
    }

    /** Number or letter of a piece. */
    String name(DrawnPiece piece) {
        return names.getOrDefault(piece, "");
    }

    /** The tone of a piece's supply. */
    static Tone supply(DrawnPiece piece) {
        PieceKind kind = piece.kind();
        if (kind == PieceKind.UNIT) {
            return Tone.INK;
        }
        return kind == PieceKind.MAIN || kind == PieceKind.PIPE || kind == PieceKind.TAP ? Tone.WATER : Tone.POWER;
    }

    /** The tone of a piece: that of its finding, where it is not well. */
    static Tone tone(DrawnPiece piece) {
        Mark mark = piece.mark();
        return mark == null || mark.tone() == Tone.GOOD || mark.tone() == Tone.QUIET ? supply(piece) : mark.tone();
    }

    private static String sign(DrawnPiece piece) {
        Mark mark = piece.mark();
        return mark == null || tone(piece) == supply(piece) ? "" : " " + mark.sign();
    }

    double width(String text) {
        return Math.max(sheet.em(HIGH), sheet.width(text, TextSize.SMALL, true) + sheet.em(0.6));
    }

    /** Width of the plate of a piece with all its words. */
    double fullWidth(DrawnPiece piece) {
        return width(forms(piece).get(0));
    }

    /** A height above the start of the pipes in words. */
    String height(double metres) {
        return words.tenths(metres == 0 ? 0 : metres) + " m";
    }

    double height() {
        return sheet.em(HIGH);
    }

    /** Puts the plate of a piece about a point, with as many words as there is room for; the number always, unless a text stands there. */
    void put(DrawnPiece piece, double x, double y, double room) {
        for (String text : forms(piece)) {
            Area area = new Area(x - width(text) / 2, y - height() / 2, width(text), height());
            boolean last = text.equals(name(piece));
            if ((width(text) <= room || last) && sheet.free(area)) {
                plate(piece, text, area, piece.binding());
                sheet.target(area, piece);
                return;
            }
        }
    }

    private List<String> forms(DrawnPiece piece) {
        List<String> forms = new ArrayList<>();
        String marked = name(piece) + sign(piece);
        String decides = piece.binding() ? " " + words.get("decides") : "";
        String renewed = piece.renewed().isEmpty() ? "" : " " + piece.renewed();
        forms.add(marked + decides + renewed);
        forms.add(marked + decides);
        forms.add(marked + renewed);
        forms.add(marked);
        forms.add(name(piece));
        return forms;
    }

    /** Draws a plate. */
    void plate(DrawnPiece piece, String text, Area area, boolean bold) {
        Tone tone = tone(piece);
        double radius = supply(piece) == Tone.WATER ? area.height() / 2 : sheet.em(0.15);
        sheet.add(new Box(
                area.x(),
                area.y(),
                area.width(),
                area.height(),
                radius,
                Ink.of(tone),
                sheet.em(bold ? 0.17 : 0.08),
                Ink.GROUND));
        sheet.take(area);
        sheet.add(new Label(
                area.x() + area.width() / 2,
                area.y() + area.height() / 2 + sheet.em(0.3),
                text,
                Anchor.MIDDLE,
                TextSize.SMALL,
                tone,
                true));
    }
}
