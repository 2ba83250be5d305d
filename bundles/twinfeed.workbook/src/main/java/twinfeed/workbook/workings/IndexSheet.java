// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import twinfeed.document.Titles;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** An index of the workings, for the screen: a row for each check, a column for each heater, and a link to each working. */
public final class IndexSheet {
    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final SheetWriter workings;
    private final Map<Finding, Integer> rows;

    /**
     * The sheet's writer.
     *
     * @param workings the sheet of workings
     * @param rows the row at which each working begins, from 0
     */
    public IndexSheet(QuoteSheets sheets, SheetWriter page, SheetWriter workings, Map<Finding, Integer> rows) {
        this.sheets = sheets;
        this.page = page;
        this.workings = workings;
        this.rows = rows;
    }

    /** Writes it. */
    public void write() {
        Map<String, List<Finding>> columns = columns();
        double[] widths = new double[columns.size() + 1];
        java.util.Arrays.fill(widths, 16);
        widths[0] = 44;
        page.columns(widths);
        sheets.head(page, "index", Math.max(1, columns.size()));
        page.setup().printNothing(page.rowIndex());
        page.row().text(0, sheets.words().get("grid.check"), SheetStyles.HEAD);
        int column = 0;
        for (String title : columns.keySet()) {
            page.text(++column, title, SheetStyles.HEAD.align(CellStyle.Alignment.CENTRE));
        }
        page.setup().header(page.rowIndex(), page.rowIndex());
        Set<String> titles = new LinkedHashSet<>();
        columns.values()
                .forEach(findings -> findings.stream().map(Finding::getTitle).forEach(titles::add));
        titles.forEach(title -> row(title, columns));
    }

    /** The findings that have a working, by the heads of their columns. */
    private Map<String, List<Finding>> columns() {
        Map<String, List<Finding>> columns = new LinkedHashMap<>();
        for (OptionAssessment option : sheets.document().assessment().getOptions()) {
            String title = Titles.option(sheets.words(), option);
            columns.put(
                    title,
                    option.getFindings().stream().filter(rows::containsKey).toList());
            List<Finding> done =
                    option.getAfterWork().stream().filter(rows::containsKey).toList();
            if (!done.isEmpty()) {
                columns.put(sheets.words().get("option.withWork", "title", title), done);
            }
        }
        return columns;
    }

    private void row(String title, Map<String, List<Finding>> columns) {
        page.row().text(0, title, SheetStyles.LINE);
        int column = 0;
        for (List<Finding> findings : columns.values()) {
            column++;
            for (Finding finding : findings) {
                if (finding.getTitle().equals(title)) {
                    int row = Objects.requireNonNull(rows.get(finding)) + 1;
                    page.number(column, row, SheetStyles.LINE.format("0").align(CellStyle.Alignment.CENTRE));
                    page.link(column, workings.sheetReference() + "!A" + row);
                    break;
                }
            }
        }
    }
}
