// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.List;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Line;
import twinfeed.document.shape.Shape.Point;
import twinfeed.document.shape.Tone;

/** How a pipe or a cable is drawn: thick where it decides, broken where nothing is recorded of it, on a pale band where it is new. */
final class Strokes {
    private static final double USUAL = 0.17;
    private static final double BINDING = 0.32;
    private static final double BAND = 0.7;

    private Strokes() {}

    static void piece(DrawingSheet sheet, DrawnPiece piece, Tone tone, Point... points) {
        if (!piece.renewed().isEmpty()) {
            sheet.below(new Line(List.of(points), new Ink(tone, 0.22), sheet.em(BAND), false));
        }
        boolean unknown = piece.extent().lengthM() == null;
        Tone shown = piece.binding() ? Chips.tone(piece) : tone;
        sheet.line(Ink.of(shown), sheet.em(piece.binding() ? BINDING : USUAL), unknown, points);
    }
}
