// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.chart;

import java.util.Locale;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.shape.Tone;
import twinfeed.units.text.NumberText;

/** Draws a chart. All distances follow from the font, so that it grows with it; all colours from the ground. */
public final class ChartCanvas {
    private static final int PLOT_LINES = 11;

    private final Chart chart;
    private final Locale locale;
    private final Canvas canvas;

    /** Draws in a parent with a grid. */
    public ChartCanvas(Composite parent, Chart chart, Locale locale) {
        this.chart = chart;
        this.locale = locale;
        this.canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        canvas.setData("twinfeed.field", "chart");
        canvas.setLayoutData(Controls.across(parent));
        Controls.describe(canvas, chart.title(), () -> chart.curves().stream()
                .map(Chart.Curve::title)
                .collect(Collectors.joining("; ")));
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        fit();
    }

    /** The widget. */
    public Canvas control() {
        return canvas;
    }

    /** Asks for the height that its font needs. */
    public void fit() {
        int line = Controls.lineHeight(canvas);
        ((GridData) canvas.getLayoutData()).heightHint =
                line * (PLOT_LINES + 5 + chart.curves().size());
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        int line = gc.getFontMetrics().getHeight();
        Rectangle area = canvas.getClientArea();
        Scale x = ChartScales.horizontal(
                chart, area.width / Math.max(1, 7 * gc.getFontMetrics().getHeight() / 2));
        Scale y = ChartScales.vertical(chart);
        title(gc);
        int left = widest(gc, y) + line / 2;
        Rectangle plot = new Rectangle(left, 2 * line + line / 2, area.width - left - line, PLOT_LINES * line);
        if (plot.width < 2 * line) {
            return;
        }
        gc.setForeground(ThemeColours.of(Tone.QUIET, canvas));
        gc.drawText(chart.yTitle(), 0, line + 2, true);
        grid(gc, plot, x, y);
        for (int i = 0; i < chart.curves().size(); i++) {
            curve(gc, plot, x, y, i);
        }
        legend(gc, plot, line);
    }

    private void title(GC gc) {
        Font plain = gc.getFont();
        gc.setForeground(canvas.getForeground());
        FontData[] data = canvas.getFont().getFontData();
        for (FontData each : data) {
            each.setStyle(SWT.BOLD);
        }
        Font bold = new Font(canvas.getDisplay(), data);
        gc.setFont(bold);
        gc.drawText(chart.title(), 0, 0, true);
        gc.setFont(plain);
        bold.dispose();
    }

    private int widest(GC gc, Scale scale) {
        return scale.ticks().stream()
                .mapToInt(tick -> gc.textExtent(number(tick, scale)).x)
                .max()
                .orElse(0);
    }

    private String number(double value, Scale scale) {
        return new NumberText(locale).fixed(value, scale.decimals());
    }

    private void grid(GC gc, Rectangle plot, Scale x, Scale y) {
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
        for (double tick : y.ticks()) {
            int at = y(plot, y, tick);
            gc.setForeground(ThemeColours.between(canvas, tick == 0 ? 0.55 : 0.15));
            gc.drawLine(plot.x, at, plot.x + plot.width, at);
            String text = number(tick, y);
            Point size = gc.textExtent(text);
            gc.setForeground(canvas.getForeground());
            gc.drawText(text, plot.x - size.x - size.y / 3, at - size.y / 2, true);
        }
        gc.setForeground(ThemeColours.between(canvas, 0.55));
        gc.drawLine(plot.x, plot.y, plot.x, plot.y + plot.height);
        if (chart.labels().isEmpty()) {
            x.ticks().forEach(tick -> below(gc, plot, x(plot, x, tick), number(tick, x)));
        } else {
            labels(gc, plot, x);
        }
        gc.setForeground(ThemeColours.of(Tone.QUIET, canvas));
        Point size = gc.textExtent(chart.xTitle());
        gc.drawText(chart.xTitle(), plot.x + plot.width - size.x, plot.y + plot.height + size.y + size.y / 2, true);
    }

    private void labels(GC gc, Rectangle plot, Scale x) {
        int widest = chart.labels().stream()
                .mapToInt(label -> gc.textExtent(label).x)
                .max()
                .orElse(1);
        int room = Math.max(1, plot.width / chart.labels().size());
        int every = Math.max(1, (widest + 6 + room - 1) / room);
        for (int i = 0; i < chart.labels().size(); i += every) {
            below(gc, plot, x(plot, x, i), chart.labels().get(i));
        }
    }

    private void below(GC gc, Rectangle plot, int at, String text) {
        gc.setForeground(ThemeColours.between(canvas, 0.55));
        gc.drawLine(at, plot.y + plot.height, at, plot.y + plot.height + 3);
        gc.setForeground(canvas.getForeground());
        Point size = gc.textExtent(text);
        gc.drawText(text, at - size.x / 2, plot.y + plot.height + size.y / 2, true);
    }

    private static int x(Rectangle plot, Scale scale, double value) {
        return plot.x + (int) Math.round(plot.width * scale.share(value));
    }

    private static int y(Rectangle plot, Scale scale, double value) {
        return plot.y + plot.height - (int) Math.round(plot.height * scale.share(value));
    }

    private void curve(GC gc, Rectangle plot, Scale x, Scale y, int number) {
        Chart.Curve curve = chart.curves().get(number);
        Pen pen = Pen.of(number);
        int radius = Math.max(3, gc.getFontMetrics().getHeight() / 5);
        pen.take(gc, canvas, 2);
        int[] points = new int[2 * curve.x().size()];
        for (int i = 0; i < curve.x().size(); i++) {
            points[2 * i] = x(plot, x, chart.x(curve, i));
            points[2 * i + 1] = y(plot, y, curve.y().get(i));
        }
        if (curve.x().size() == 1) {
            point(gc, plot, pen, points, radius);
            return;
        }
        gc.drawPolyline(points);
        gc.setLineStyle(SWT.LINE_SOLID);
        int every = Math.max(1, curve.x().size() / 12);
        for (int i = 0; i < curve.x().size(); i += every) {
            pen.mark(gc, points[2 * i], points[2 * i + 1], radius);
        }
    }

    /** A single point is what the curves are about: lines lead from it to both axes. */
    private void point(GC gc, Rectangle plot, Pen pen, int[] at, int radius) {
        gc.setLineWidth(1);
        gc.setLineStyle(SWT.LINE_DOT);
        gc.drawLine(at[0], at[1], at[0], plot.y + plot.height);
        gc.drawLine(plot.x, at[1], at[0], at[1]);
        gc.setLineStyle(SWT.LINE_SOLID);
        pen.mark(gc, at[0], at[1], 2 * radius);
    }

    private void legend(GC gc, Rectangle plot, int line) {
        int top = plot.y + plot.height + 2 * line;
        for (int i = 0; i < chart.curves().size(); i++) {
            Chart.Curve curve = chart.curves().get(i);
            int middle = top + i * line + line / 2;
            Pen pen = Pen.of(i);
            pen.take(gc, canvas, 2);
            if (curve.x().size() > 1) {
                gc.drawLine(0, middle, 3 * line, middle);
            }
            gc.setLineStyle(SWT.LINE_SOLID);
            pen.mark(gc, 3 * line / 2, middle, Math.max(3, line / 5));
            gc.setForeground(canvas.getForeground());
            gc.drawText(curve.title(), 3 * line + line / 2, top + i * line, true);
        }
    }
}
