// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Series;
import twinfeed.workbook.sheet.CellRanges;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.CurveChart;
import twinfeed.workbook.writer.SheetWriter;

/** The flow by month now and offered, and the other curves of the assessment, each with a native chart over its points. */
public final class SeasonSheet {
    private static final int LAST = Curves.MOST;
    private static final int BESIDE = 3;
    private static final int CHART_ROWS = 18;
    private static final double CHART_ROW_PT = 15;

    /** Height of a page at the scale at which the sheet prints, in points. */
    private final QuoteSheets sheets;

    private final SheetWriter page;

    /** The sheet's writer. */
    public SeasonSheet(QuoteSheets sheets, SheetWriter page) {
        this.sheets = sheets;
        this.page = page;
    }

    /** Writes it. */
    public void write() {
        page.columns(24, 13.5, 13.5, 13.5, 13.5, 13.5, 13.5);
        sheets.head(page, "season", LAST);
        List<Curves.Group> groups = new Curves(sheets.words(), sheets.document()).groups();
        if (groups.isEmpty()) {
            page.row().text(0, LAST, sheets.words().get("season.none"), SheetStyles.MUTED);
        }
        // The charts stand together, on one page; their figures below are for the screen.
        List<Integer> places = new ArrayList<>();
        for (Curves.Group group : groups) {
            page.gap(6);
            page.row().text(0, LAST, group.title(), SheetStyles.BAND);
            places.add(page.rowIndex() + 1);
            for (int row = 0; row < CHART_ROWS; row++) {
                page.gap(CHART_ROW_PT);
            }
        }
        page.setup().onePage().printOnly(page.rowIndex(), LAST);
        for (int at = 0; at < groups.size(); at++) {
            write(groups.get(at), places.get(at));
        }
    }

    private void write(Curves.Group group, int firstRow) {
        page.gap(6);
        page.row().text(0, LAST, group.title(), SheetStyles.BAND);
        List<CurveChart.Curve> drawn = group.labelled() ? labelled(group) : numeric(group);
        Series first = group.curves().get(0).series();
        new CurveChart(page, title(first.getXTitle(), first.getXUnit()), title(first.getYTitle(), first.getYUnit()))
                .draw(drawn, firstRow, firstRow + CHART_ROWS - 1, LAST + 1);
    }

    private static String title(@Nullable String title, @Nullable String unit) {
        String words = title == null ? "" : title;
        return unit == null || unit.isEmpty() ? words : words + ", " + unit;
    }

    /** One row for each label, one column for each curve. */
    private List<CurveChart.Curve> labelled(Curves.Group group) {
        List<String> labels = group.curves().get(0).series().getLabels();
        Series axes = group.curves().get(0).series();
        page.row().text(0, title(axes.getXTitle(), axes.getXUnit()), SheetStyles.HEAD);
        List<String> nameCells = new ArrayList<>();
        for (int at = 0; at < group.curves().size(); at++) {
            page.text(at + 1, group.curves().get(at).name(), SheetStyles.HEAD.align(CellStyle.Alignment.RIGHT));
            nameCells.add(page.fullAddress(at + 1));
        }
        int first = page.rowIndex() + 1;
        for (int row = 0; row < labels.size(); row++) {
            page.row().text(0, labels.get(row), SheetStyles.LINE);
            for (int at = 0; at < group.curves().size(); at++) {
                page.number(
                        at + 1,
                        value(group.curves().get(at).series(), labels.get(row)),
                        SheetStyles.LINE.format("0.00"));
            }
        }
        int last = page.rowIndex();
        List<CurveChart.Curve> drawn = new ArrayList<>();
        for (int at = 0; at < group.curves().size(); at++) {
            Series series = group.curves().get(at).series();
            drawn.add(new CurveChart.Curve(
                    group.curves().get(at).name(),
                    nameCells.get(at),
                    labels,
                    List.of(),
                    series.getY(),
                    range(0, first, last),
                    range(at + 1, first, last)));
        }
        return drawn;
    }

    private static @Nullable Double value(Series series, String label) {
        int at = series.getLabels().indexOf(label);
        return at < 0 ? null : series.getY().get(at);
    }

    /** Two columns for each curve, for each has horizontal values of its own; three curves side by side. */
    private List<CurveChart.Curve> numeric(Curves.Group group) {
        CellStyle x = SheetStyles.LINE.format(NumberFormats.ofAll(all(group, Series::getX)));
        CellStyle y = SheetStyles.LINE.format(NumberFormats.ofAll(all(group, Series::getY)));
        List<CurveChart.Curve> drawn = new ArrayList<>();
        for (int from = 0; from < group.curves().size(); from += BESIDE) {
            List<Curves.Curve> curves =
                    group.curves().subList(from, Math.min(group.curves().size(), from + BESIDE));
            drawn.addAll(beside(curves, x, y));
        }
        return drawn;
    }

    private List<CurveChart.Curve> beside(List<Curves.Curve> curves, CellStyle x, CellStyle y) {
        Series axes = curves.get(0).series();
        sheets.tableHead(page, "season", 1, Set.of());
        List<String> names = new ArrayList<>();
        for (int at = 0; at < curves.size(); at++) {
            page.text(
                    1 + 2 * at, 2 + 2 * at, curves.get(at).name(), SheetStyles.HEAD.align(CellStyle.Alignment.CENTRE));
            names.add(page.fullAddress(1 + 2 * at));
        }
        page.row().text(0, "", SheetStyles.LINE);
        for (int at = 0; at < curves.size(); at++) {
            page.text(
                    1 + 2 * at,
                    title(axes.getXTitle(), axes.getXUnit()),
                    SheetStyles.LINE_MUTED.align(CellStyle.Alignment.RIGHT));
            page.text(
                    2 + 2 * at,
                    title(axes.getYTitle(), axes.getYUnit()),
                    SheetStyles.LINE_MUTED.align(CellStyle.Alignment.RIGHT));
        }
        int first = page.rowIndex() + 1;
        points(curves, x, y);
        List<CurveChart.Curve> drawn = new ArrayList<>();
        for (int at = 0; at < curves.size(); at++) {
            Series series = curves.get(at).series();
            int last = first + series.getY().size() - 1;
            drawn.add(new CurveChart.Curve(
                    curves.get(at).name(),
                    names.get(at),
                    null,
                    series.getX(),
                    series.getY(),
                    range(1 + 2 * at, first, last),
                    range(2 + 2 * at, first, last)));
        }
        return drawn;
    }

    private void points(List<Curves.Curve> curves, CellStyle x, CellStyle y) {
        int most = mostPoints(curves);
        for (int point = 0; point < most; point++) {
            page.row();
            for (int at = 0; at < curves.size(); at++) {
                Series series = curves.get(at).series();
                if (point < series.getY().size()) {
                    page.number(1 + 2 * at, series.getX().get(point), x);
                    page.number(2 + 2 * at, series.getY().get(point), y);
                }
            }
        }
    }

    private static int mostPoints(List<Curves.Curve> curves) {
        return curves.stream()
                .mapToInt(curve -> curve.series().getY().size())
                .max()
                .orElse(0);
    }

    private static List<Double> all(Curves.Group group, Function<Series, List<Double>> values) {
        return group.curves().stream()
                .flatMap(curve -> values.apply(curve.series()).stream())
                .toList();
    }

    private String range(int column, int firstRow, int lastRow) {
        return page.sheetReference() + "!" + CellRanges.of(column, firstRow, lastRow);
    }
}
