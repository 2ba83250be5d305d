// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.HouseDrawing;
import twinfeed.document.drawing.layout.HouseLayout;
import twinfeed.document.drawing.layout.HousePicture;
import twinfeed.document.shape.Shape;
import twinfeed.document.shape.Shape.Box;
import twinfeed.document.shape.Shape.Disc;
import twinfeed.document.shape.Shape.Ink;
import twinfeed.document.shape.Shape.Label;
import twinfeed.document.shape.Shape.Line;
import twinfeed.document.shape.TextSize;
import twinfeed.document.shape.Tone;

/** Draws a house as wide as there is room, and as high as it needs. A click on a piece leads to its field. */
final class HouseCanvas {
    /** Size of letters as a share of the height of a line. */
    private static final double LETTERS = 0.78;

    private static final int MARGIN = 2;

    private final Locale locale;
    private final Canvas canvas;
    private final Runnable resized;
    private final Map<TextSize, Font> plain = new EnumMap<>(TextSize.class);
    private final Map<TextSize, Font> bold = new EnumMap<>(TextSize.class);
    private HouseDrawing drawing;
    private @Nullable HousePicture picture;
    private int laidOutFor;

    /**
     * A canvas.
     *
     * @param resized told when it needs another height
     */
    HouseCanvas(
            Composite parent,
            Locale locale,
            String name,
            HouseDrawing drawing,
            Consumer<DrawnPiece> open,
            Runnable resized) {
        this.locale = locale;
        this.drawing = drawing;
        this.resized = resized;
        this.canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        for (TextSize size : TextSize.values()) {
            FontDescriptor font = FontDescriptor.createFrom(canvas.getFont());
            int points = (int) Math.round(canvas.getFont().getFontData()[0].getHeight() * size.share());
            plain.put(size, font.setHeight(points).createFont(canvas.getDisplay()));
            bold.put(size, font.setHeight(points).setStyle(SWT.BOLD).createFont(canvas.getDisplay()));
        }
        canvas.setData("twinfeed.field", "feeds");
        Controls.describe(canvas, name, () -> this.drawing.spoken());
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.MouseDown, event -> at(event.x, event.y).ifPresent(open));
        canvas.addListener(SWT.MouseMove, event -> point(event.x, event.y));
        canvas.addListener(SWT.Resize, event -> picture(canvas.getClientArea().width));
        canvas.addListener(SWT.Dispose, event -> {
            plain.values().forEach(Font::dispose);
            bold.values().forEach(Font::dispose);
        });
    }

    /** Shows another drawing. */
    void show(HouseDrawing next) {
        int before = height(laidOutFor);
        drawing = next;
        picture = null;
        if (laidOutFor > 0 && height(laidOutFor) != before) {
            resized.run();
        }
        canvas.redraw();
    }

    /** The drawing that is shown. */
    HouseDrawing drawing() {
        return drawing;
    }

    /** The control. */
    Canvas control() {
        return canvas;
    }

    /** The height that it needs at a width. */
    int height(int width) {
        return width <= 0 ? 0 : (int) Math.ceil(picture(width).height()) + 2 * MARGIN;
    }

    private HousePicture picture(int width) {
        HousePicture known = picture;
        if (known == null || laidOutFor != width) {
            GC gc = new GC(canvas);
            gc.setFont(plain.get(TextSize.NORMAL));
            double letters = gc.getFontMetrics().getHeight() * LETTERS;
            HouseLayout layout = new HouseLayout(
                    Math.max(1, width - 2.0 * MARGIN),
                    letters,
                    (text, size, thick) -> wide(gc, text, size, thick),
                    locale);
            known = layout.of(drawing);
            gc.dispose();
            picture = known;
            laidOutFor = width;
        }
        return known;
    }

    private double wide(GC gc, String text, TextSize size, boolean thick) {
        gc.setFont((thick ? bold : plain).get(size));
        return gc.textExtent(text).x;
    }

    private Optional<DrawnPiece> at(int x, int y) {
        return picture(canvas.getClientArea().width).at(x - MARGIN, y - MARGIN);
    }

    private void point(int x, int y) {
        Optional<DrawnPiece> piece = at(x, y);
        canvas.setToolTipText(piece.map(DrawnPiece::sentence).orElse(null));
        canvas.setCursor(piece.isPresent() ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        gc.setLineCap(SWT.CAP_ROUND);
        gc.setLineJoin(SWT.JOIN_ROUND);
        for (Shape shape : picture(canvas.getClientArea().width).shapes()) {
            if (shape instanceof Line line) {
                line(gc, line);
            } else if (shape instanceof Box box) {
                box(gc, box);
            } else if (shape instanceof Disc disc) {
                disc(gc, disc);
            } else if (shape instanceof Label label) {
                label(gc, label);
            }
        }
    }

    private Color colour(Ink ink) {
        if (ink.strength() <= 0) {
            return canvas.getBackground();
        }
        return ink.tone() == Tone.INK
                ? ThemeColours.between(canvas, ink.strength())
                : ThemeColours.tint(ink.tone(), canvas, ink.strength());
    }

    private static int near(double value) {
        return (int) Math.round(value) + MARGIN;
    }

    private void line(GC gc, Line line) {
        List<Shape.Point> points = line.points();
        int[] path = new int[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            path[2 * i] = near(points.get(i).x());
            path[2 * i + 1] = near(points.get(i).y());
        }
        gc.setForeground(colour(line.ink()));
        gc.setLineWidth(Math.max(1, (int) Math.round(line.thickness())));
        gc.setLineStyle(line.dashed() ? SWT.LINE_DASH : SWT.LINE_SOLID);
        gc.drawPolyline(path);
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    private void box(GC gc, Box box) {
        int x = near(box.x());
        int y = near(box.y());
        int wide = near(box.x() + box.width()) - x;
        int high = near(box.y() + box.height()) - y;
        int arc = (int) Math.round(2 * box.radius());
        if (box.fill() != null) {
            gc.setBackground(colour(box.fill()));
            gc.fillRoundRectangle(x, y, wide, high, arc, arc);
        }
        if (box.line() != null) {
            gc.setForeground(colour(box.line()));
            gc.setLineWidth(Math.max(1, (int) Math.round(box.thickness())));
            gc.drawRoundRectangle(x, y, wide, high, arc, arc);
        }
    }

    private void disc(GC gc, Disc disc) {
        int x = near(disc.x() - disc.radius());
        int y = near(disc.y() - disc.radius());
        int size = Math.max(3, (int) Math.round(2 * disc.radius()));
        gc.setBackground(colour(disc.fill()));
        gc.fillOval(x, y, size, size);
        if (disc.line() != null) {
            gc.setForeground(colour(disc.line()));
            gc.setLineWidth(Math.max(1, (int) Math.round(disc.thickness())));
            gc.drawOval(x, y, size, size);
        }
    }

    private void label(GC gc, Label label) {
        gc.setFont((label.bold() ? bold : plain).get(label.size()));
        gc.setForeground(label.tone() == Tone.INK ? canvas.getForeground() : ThemeColours.of(label.tone(), canvas));
        Point size = gc.textExtent(label.text());
        int ascent = gc.getFontMetrics().getAscent() + gc.getFontMetrics().getLeading();
        double left = label.x() - size.x * label.anchor().share();
        gc.drawText(label.text(), near(left), near(label.y()) - ascent, true);
    }
}
