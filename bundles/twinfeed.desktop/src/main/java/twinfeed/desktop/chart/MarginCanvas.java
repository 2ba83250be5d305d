// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.chart;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Shortened;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/**
 * All margins on one scale, as shares of their limits: right of the line in the middle passes, left of it fails. A bar shows
 * where the margin lies in nine of ten cases, given the tolerances. What lies beyond the scale ends in an arrow.
 */
public final class MarginCanvas {
    private static final int GAP = 6;

    private final Words words;
    private final List<MarginRow> rows;
    private final Canvas canvas;

    /** Draws in a parent with a grid. */
    public MarginCanvas(Composite parent, List<MarginRow> rows, Words words) {
        this.words = words;
        this.rows = List.copyOf(rows);
        this.canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        canvas.setData("twinfeed.field", "margins");
        canvas.setLayoutData(Controls.across(parent));
        Controls.describe(canvas, words.get("chart.margins"), () -> rows.stream()
                .map(MarginRow::sentence)
                .collect(Collectors.joining("; ")));
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.MouseMove, event -> canvas.setToolTipText(tip(event.y)));
        fit();
    }

    /** The widget. */
    public Canvas control() {
        return canvas;
    }

    /** Asks for the height that its font needs. */
    public void fit() {
        int line = Controls.lineHeight(canvas);
        ((GridData) canvas.getLayoutData()).heightHint = (rows.size() + 1) * (line + GAP) + GAP;
    }

    private String tip(int y) {
        int row = y / (Controls.lineHeight(canvas) + GAP) - 1;
        return row >= 0 && row < rows.size() ? rows.get(row).sentence() : "";
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        int width = canvas.getClientArea().width;
        int names = Math.min(
                2 * width / 5,
                GAP
                        + rows.stream()
                                .mapToInt(row -> gc.textExtent(row.title()).x)
                                .max()
                                .orElse(0));
        int answers = GAP
                + rows.stream()
                        .mapToInt(row -> gc.textExtent(answer(row)).x)
                        .max()
                        .orElse(0);
        int room = width - names - answers - 2 * GAP;
        int left = names + GAP;
        int height = gc.getFontMetrics().getHeight() + GAP;
        head(gc, left, room, height);
        for (int i = 0; i < rows.size(); i++) {
            row(gc, rows.get(i), (i + 1) * height, names, left, room);
        }
    }

    private static String answer(MarginRow row) {
        return row.mark().sign() + " " + row.text();
    }

    private void head(GC gc, int left, int room, int height) {
        gc.setForeground(ThemeColours.of(Tone.QUIET, canvas));
        centred(gc, words.get("chart.limit"), left + room / 2);
        String fails = words.get("chart.fails");
        String passes = words.get("chart.passes");
        int half = room / 2 - gc.textExtent(words.get("chart.limit")).x / 2;
        if (gc.textExtent(passes).x < half) {
            gc.drawText(fails, left, 0, true);
            gc.drawText(passes, left + room - gc.textExtent(passes).x, 0, true);
        }
        gc.setForeground(ThemeColours.between(canvas, 0.5));
        gc.drawLine(left + room / 2, height, left + room / 2, height * (rows.size() + 1));
    }

    private static void centred(GC gc, String text, int at) {
        Point size = gc.textExtent(text);
        gc.drawText(text, at - size.x / 2, 0, true);
    }

    private void row(GC gc, MarginRow row, int top, int names, int left, int room) {
        int line = gc.getFontMetrics().getHeight();
        int middle = top + (line + GAP) / 2;
        gc.setForeground(canvas.getForeground());
        gc.drawText(Shortened.to(gc, row.title(), names), 0, top + GAP / 2, true);
        gc.setForeground(ThemeColours.between(canvas, 0.12));
        gc.drawLine(left, middle, left + room, middle);
        gc.setBackground(ThemeColours.of(row.mark().tone(), canvas));
        gc.setForeground(ThemeColours.of(row.mark().tone(), canvas));
        int from = place(row.low(), left, room);
        int to = place(row.high(), left, room);
        gc.setAlpha(110);
        gc.fillRectangle(from, middle - line / 5, Math.max(1, to - from), 2 * (line / 5));
        gc.setAlpha(255);
        gc.setLineWidth(2);
        int at = place(row.share(), left, room);
        gc.drawLine(at, middle - line / 3, at, middle + line / 3);
        gc.setLineWidth(1);
        if (Math.abs(row.share()) > 1) {
            arrow(gc, at, middle, line / 3, row.share() > 0 ? 1 : -1);
        }
        gc.drawText(answer(row), left + room + GAP, top + GAP / 2, true);
    }

    private static int place(double share, int left, int room) {
        double within = Math.max(-1, Math.min(1, share));
        return left + (int) Math.round(room * (within + 1) / 2);
    }

    private static void arrow(GC gc, int at, int middle, int size, int direction) {
        int back = at - direction * size;
        gc.fillPolygon(new int[] {at, middle, back, middle - size, back, middle + size});
    }
}
