// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.util.LocaleUtil;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickMark;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Palette;

/** A native chart of curves whose points stand in cells; the points are cached in the chart, so that previews draw it. */
public final class CurveChart {
    private static final double THICK_PT = 2;
    private static final double FINE_PT = 0.5;

    private final SheetWriter page;
    private final String xTitle;
    private final String yTitle;

    /**
     * A curve.
     *
     * @param name its name
     * @param nameCell cell of the name, as seen from any sheet
     * @param labels labels of its points, absent where x is a number
     * @param x horizontal values; empty where there are labels
     * @param y vertical values
     * @param xCells cells of labels or horizontal values, as seen from any sheet
     * @param yCells cells of the vertical values
     */
    public record Curve(
            String name,
            String nameCell,
            @Nullable List<String> labels,
            List<Double> x,
            List<Double> y,
            String xCells,
            String yCells) {}

    /** A chart on a page. */
    public CurveChart(SheetWriter page, String xTitle, String yTitle) {
        this.page = page;
        this.xTitle = xTitle;
        this.yTitle = yTitle;
    }

    /** Draws it over whole cells, from the first row and column to before the last ones. */
    public void draw(List<Curve> curves, int firstRow, int lastRow, int lastColumn) {
        XSSFDrawing drawing = page.sheet().createDrawingPatriarch();
        XSSFChart chart = drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 0, firstRow, lastColumn, lastRow));
        // POI writes the language of its thread into the titles of axes; the book's language must not depend on the
        // machine.
        Locale before = LocaleUtil.getUserLocale();
        LocaleUtil.setUserLocale(page.book().locale());
        try {
            fill(chart, curves);
        } finally {
            LocaleUtil.setUserLocale(before);
        }
    }

    private void fill(XSSFChart chart, List<Curve> curves) {
        // The band above the chart is its title.
        chart.setAutoTitleDeleted(true);
        // Without this a curve with fewer points than another one runs on to 0.
        chart.displayBlanksAs(DisplayBlanks.GAP);
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        boolean labelled = curves.get(0).labels() != null;
        XDDFChartAxis bottom =
                labelled ? chart.createCategoryAxis(AxisPosition.BOTTOM) : chart.createValueAxis(AxisPosition.BOTTOM);
        XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
        left.setCrosses(AxisCrosses.AUTO_ZERO);
        axis(bottom, xTitle);
        axis(left, yTitle);
        XDDFChartData data = chart.createData(labelled ? ChartTypes.LINE : ChartTypes.SCATTER, bottom, left);
        data.setVaryColors(false);
        if (data instanceof XDDFScatterChartData scatter) {
            scatter.setStyle(ScatterStyle.LINE_MARKER);
        }
        for (int at = 0; at < curves.size(); at++) {
            add(data, curves.get(at), page.book().looks().palette().curve(at));
        }
    }

    private static void axis(XDDFChartAxis axis, String title) {
        axis.setTitle(title);
        axis.setMajorTickMark(AxisTickMark.OUT);
        axis.getOrAddMajorGridProperties().setLineProperties(line(Palette.RULE, FINE_PT));
    }

    private static void add(XDDFChartData data, Curve curve, int rgb) {
        Double[] y = curve.y().toArray(new Double[0]);
        XDDFChartData.Series series =
                data.addSeries(horizontal(curve), XDDFDataSourcesFactory.fromArray(y, curve.yCells()));
        series.setTitle(curve.name(), new CellReference(curve.nameCell()));
        boolean point = curve.y().size() == 1;
        if (series instanceof XDDFLineChartData.Series line) {
            line.setSmooth(false);
            line.setMarkerStyle(MarkerStyle.CIRCLE);
        } else if (series instanceof XDDFScatterChartData.Series scatter) {
            scatter.setSmooth(false);
            scatter.setMarkerStyle(point ? MarkerStyle.DIAMOND : MarkerStyle.NONE);
        }
        paint(series, rgb, curve.y().size() == 2);
        // The points stand in cells already: the chart's own plot() would build a second book to put them in.
        series.plot();
    }

    private static XDDFDataSource<?> horizontal(Curve curve) {
        List<String> labels = curve.labels();
        return labels == null
                ? XDDFDataSourcesFactory.fromArray(curve.x().toArray(new Double[0]), curve.xCells())
                : XDDFDataSourcesFactory.fromArray(labels.toArray(new String[0]), curve.xCells());
    }

    private static void paint(XDDFChartData.Series series, int rgb, boolean dashed) {
        XDDFLineProperties line = line(rgb, THICK_PT);
        if (dashed) {
            line.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
        }
        XDDFShapeProperties shape = new XDDFShapeProperties();
        shape.setLineProperties(line);
        series.setShapeProperties(shape);
    }

    private static XDDFLineProperties line(int rgb, double points) {
        byte[] bytes = {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
        XDDFLineProperties line = new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(bytes)));
        line.setWidth(points);
        return line;
    }
}
