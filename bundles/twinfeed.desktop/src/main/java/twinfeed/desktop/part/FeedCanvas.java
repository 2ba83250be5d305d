// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Palette;
import twinfeed.desktop.look.Shortened;
import twinfeed.desktop.text.Words;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;

/**
 * The two feeds of the house, running down side by side from main and service fuse until both meet in the unit. Each piece
 * carries its readings, and the finding that bears hardest on it with sign and margin; the deciding one is framed. A click on a
 * piece leads to its field.
 */
final class FeedCanvas {
    private static final int GAP = 4;
    private static final int RADIUS = 4;

    private final Words words;
    private final Canvas canvas;
    private final Map<Rectangle, DrawnPiece> places = new LinkedHashMap<>();
    private HouseDrawing picture;

    FeedCanvas(Composite parent, Words words, HouseDrawing picture, Consumer<DrawnPiece> open) {
        this.words = words;
        this.picture = picture;
        this.canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        canvas.setData("twinfeed.field", "feeds");
        canvas.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        Controls.describe(canvas, words.get("pane.feeds"), this::spoken);
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.MouseDown, event -> at(event.x, event.y).ifPresent(open));
        canvas.addListener(SWT.MouseMove, event -> point(event.x, event.y));
        fit();
    }

    /** Shows another picture. */
    void show(HouseDrawing next) {
        boolean grown = rows(next) != rows(picture);
        picture = next;
        if (grown) {
            fit();
            canvas.getParent().layout();
        }
        canvas.redraw();
    }

    /** The picture that is shown. */
    HouseDrawing picture() {
        return picture;
    }

    /** The control. */
    Canvas control() {
        return canvas;
    }

    private static int rows(HouseDrawing picture) {
        return Math.max(picture.water().size(), picture.power().size()) + 1;
    }

    private void fit() {
        ((GridData) canvas.getLayoutData()).heightHint = (rows(picture) + 1) * rowHeight() + GAP;
    }

    private int rowHeight() {
        return Controls.lineHeight(canvas) + GAP;
    }

    private Optional<DrawnPiece> at(int x, int y) {
        return places.entrySet().stream()
                .filter(entry -> entry.getKey().contains(x, y))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private void point(int x, int y) {
        Optional<DrawnPiece> piece = at(x, y);
        canvas.setToolTipText(piece.map(DrawnPiece::sentence).orElse(null));
        canvas.setCursor(piece.isPresent() ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
    }

    private String spoken() {
        List<DrawnPiece> all = new ArrayList<>(picture.water());
        all.addAll(picture.power());
        all.add(picture.unit());
        return all.stream().map(DrawnPiece::sentence).collect(Collectors.joining("; "));
    }

    private void paint(GC gc) {
        places.clear();
        Rectangle area = canvas.getClientArea();
        int row = gc.getFontMetrics().getHeight() + GAP;
        int half = (area.width - 2 * GAP) / 2;
        title(gc, words.get("feed.water"), Tone.WATER, 0, half);
        title(gc, words.get("feed.power"), Tone.POWER, half + 2 * GAP, half);
        int bottom = row * rows(picture);
        column(gc, picture.water(), Tone.WATER, new Rectangle(0, row, half, bottom));
        column(gc, picture.power(), Tone.POWER, new Rectangle(half + 2 * GAP, row, half, bottom));
        unit(gc, new Rectangle(0, bottom, area.width - 1, row));
    }

    private void title(GC gc, String text, Tone tone, int x, int width) {
        gc.setForeground(Palette.of(tone, canvas));
        gc.drawText(Shortened.to(gc, text, width), x, 0, true);
    }

    /** A line down to the unit, and a knot on it for each piece. */
    private void column(GC gc, List<DrawnPiece> pieces, Tone tone, Rectangle place) {
        int row = gc.getFontMetrics().getHeight() + GAP;
        Color colour = Palette.of(tone, canvas);
        int line = place.x + GAP + RADIUS;
        gc.setForeground(colour);
        gc.setLineWidth(2);
        gc.drawLine(line, place.y + row / 2, line, place.height);
        gc.setLineWidth(1);
        for (int i = 0; i < pieces.size(); i++) {
            Rectangle at = new Rectangle(place.x, place.y + i * row, place.width, row);
            gc.setBackground(colour);
            gc.fillOval(line - RADIUS, at.y + row / 2 - RADIUS, 2 * RADIUS, 2 * RADIUS);
            piece(
                    gc,
                    pieces.get(i),
                    new Rectangle(line + RADIUS + GAP, at.y, at.x + at.width - line - RADIUS - GAP, row));
        }
    }

    private void unit(GC gc, Rectangle place) {
        gc.setBackground(Palette.between(canvas, 0.08));
        gc.fillRoundRectangle(place.x, place.y, place.width, place.height, GAP, GAP);
        gc.setForeground(Palette.between(canvas, 0.5));
        gc.drawRoundRectangle(place.x, place.y, place.width, place.height, GAP, GAP);
        piece(gc, picture.unit(), new Rectangle(place.x + GAP, place.y, place.width - 2 * GAP, place.height));
    }

    private void piece(GC gc, DrawnPiece piece, Rectangle place) {
        places.put(place, piece);
        Mark mark = piece.mark();
        int right = place.x + place.width;
        int y = place.y + (place.height - gc.getFontMetrics().getHeight()) / 2;
        if (mark != null) {
            String answer = (mark.sign() + " " + piece.margin()).strip();
            Point size = gc.textExtent(answer);
            right -= size.x + GAP;
            gc.setForeground(Palette.of(mark.tone(), canvas));
            gc.drawText(answer, right, y, true);
            if (piece.binding()) {
                gc.setLineWidth(2);
                gc.drawRoundRectangle(place.x - 2, place.y + 1, place.width, place.height - 2, GAP, GAP);
                gc.setLineWidth(1);
            }
        }
        names(gc, piece, place.x + 2, y, right - place.x - GAP);
    }

    private void names(GC gc, DrawnPiece piece, int x, int y, int width) {
        Font plain = gc.getFont();
        if (piece.binding()) {
            gc.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        }
        String name = Shortened.to(gc, piece.name(), width);
        gc.setForeground(canvas.getForeground());
        gc.drawText(name, x, y, true);
        int used = gc.textExtent(name).x + GAP;
        gc.setFont(plain);
        if (!piece.detail().isEmpty() && used < width) {
            gc.setForeground(Palette.of(Tone.QUIET, canvas));
            gc.drawText(Shortened.to(gc, piece.detail(), width - used), x + used, y, true);
        }
    }
}
