// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.picture;

import java.util.Locale;
import twinfeed.desktop.chart.Chart;
import twinfeed.desktop.chart.ChartScales;
import twinfeed.desktop.chart.Pen;
import twinfeed.desktop.chart.Scale;
import twinfeed.document.shape.Anchor;
import twinfeed.document.shape.Svg;
import twinfeed.document.shape.Tone;
import twinfeed.units.text.NumberText;

/** A chart as SVG: curves told from one another by stroke and marker, with a legend below. */
public final class ChartSvg {
    private static final double WIDTH = 760;
    private static final double EDGE = 16;
    private static final double LEFT = 76;
    private static final double TOP = 60;
    private static final double HIGH = 280;
    private static final double LINE = 22;
    private static final int TICKS = 8;
    private static final int MARKS = 12;
    private static final String GRID = "#D8D8D8";
    private static final String AXIS = "#707070";

    private final Chart chart;
    private final Svg svg;
    private final NumberText numbers;
    private final Scale x;
    private final Scale y;

    private ChartSvg(Chart chart, Svg svg, Locale locale) {
        this.chart = chart;
        this.svg = svg;
        this.numbers = new NumberText(locale);
        this.x = ChartScales.horizontal(chart, TICKS);
        this.y = ChartScales.vertical(chart);
    }

    /** The picture. */
    public static String of(Chart chart, Locale locale) {
        double height = TOP + HIGH + 3 * LINE + chart.curves().size() * LINE + EDGE;
        Svg svg = new Svg(WIDTH, height, chart.title());
        ChartSvg drawing = new ChartSvg(chart, svg, locale);
        svg.text(EDGE, EDGE + LINE / 2, Svg.shortened(chart.title(), WIDTH - 2 * EDGE), Anchor.START, Tone.INK, true);
        svg.text(EDGE, EDGE + LINE * 1.5, chart.yTitle(), Anchor.START, Tone.QUIET, false);
        drawing.axes();
        for (int i = 0; i < chart.curves().size(); i++) {
            drawing.curve(i);
            drawing.legend(i);
        }
        return svg.toString();
    }

    private double x(double value) {
        return LEFT + (WIDTH - LEFT - EDGE) * x.share(value);
    }

    private double y(double value) {
        return TOP + HIGH * (1 - y.share(value));
    }

    private void axes() {
        double right = WIDTH - EDGE;
        for (double tick : y.ticks()) {
            svg.line(LEFT, y(tick), right, y(tick), tick == 0 ? AXIS : GRID, 1);
            svg.text(LEFT - 8, y(tick) + 5, numbers.fixed(tick, y.decimals()), Anchor.END, Tone.INK, false);
        }
        svg.line(LEFT, TOP, LEFT, TOP + HIGH, AXIS, 1);
        double below = TOP + HIGH + LINE;
        if (chart.labels().isEmpty()) {
            for (double tick : x.ticks()) {
                svg.line(x(tick), TOP + HIGH, x(tick), TOP + HIGH + 4, AXIS, 1);
                svg.text(x(tick), below, numbers.fixed(tick, x.decimals()), Anchor.MIDDLE, Tone.INK, false);
            }
        } else {
            labels(below);
        }
        svg.text(right, below + LINE, chart.xTitle(), Anchor.END, Tone.QUIET, false);
    }

    /** As many names as there is room for. */
    private void labels(double below) {
        double widest = chart.labels().stream().mapToDouble(Svg::width).max().orElse(1) + 8;
        double room = (WIDTH - LEFT - EDGE) / chart.labels().size();
        int every = Math.max(1, (int) Math.ceil(widest / room));
        for (int i = 0; i < chart.labels().size(); i += every) {
            svg.text(x(i), below, chart.labels().get(i), Anchor.MIDDLE, Tone.INK, false);
        }
    }

    private void curve(int number) {
        Chart.Curve curve = chart.curves().get(number);
        Pen pen = Pen.of(number);
        int count = curve.x().size();
        double[] points = new double[2 * count];
        for (int i = 0; i < count; i++) {
            points[2 * i] = x(chart.labels().isEmpty() ? curve.x().get(i) : i);
            points[2 * i + 1] = y(curve.y().get(i));
        }
        if (count > 1) {
            svg.curve(points, Svg.colour(pen.tone()), pen.dashes());
        }
        int every = Math.max(1, count / MARKS);
        for (int i = 0; i < count; i += every) {
            mark(pen, points[2 * i], points[2 * i + 1], count == 1 ? 8 : 4);
        }
    }

    private void mark(Pen pen, double atX, double atY, double radius) {
        if (pen.corners() == 0) {
            svg.disc(atX, atY, radius, Svg.colour(pen.tone()));
            return;
        }
        double[] points = new double[2 * pen.corners()];
        for (int i = 0; i < pen.corners(); i++) {
            double angle = 2 * Math.PI * i / pen.corners() - Math.PI / 2;
            points[2 * i] = atX + 1.3 * radius * Math.cos(angle);
            points[2 * i + 1] = atY + 1.3 * radius * Math.sin(angle);
        }
        svg.shape(points, Svg.colour(pen.tone()));
    }

    private void legend(int number) {
        Chart.Curve curve = chart.curves().get(number);
        Pen pen = Pen.of(number);
        double middle = TOP + HIGH + 2.5 * LINE + number * LINE + LINE / 2;
        if (curve.x().size() > 1) {
            svg.curve(new double[] {EDGE, middle, EDGE + 48, middle}, Svg.colour(pen.tone()), pen.dashes());
        }
        mark(pen, EDGE + 24, middle, 4);
        svg.text(EDGE + 60, middle + 5, Svg.shortened(curve.title(), WIDTH - 80), Anchor.START, Tone.INK, false);
    }
}
