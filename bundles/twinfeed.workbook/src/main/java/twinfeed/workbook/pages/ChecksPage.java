// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Titles;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;

/** Heaters by checks, and each answer in figures. */
public final class ChecksPage {
    private static final int LAST = 9;

    private final Sheets sheets;
    private final Page page;
    private final Answers answers;
    private final Map<Finding, ResultCells> results;

    /**
     * The sheet's writer.
     *
     * @param results where the results of the workings stand
     */
    public ChecksPage(Sheets sheets, Page page, Map<Finding, ResultCells> results) {
        this.sheets = sheets;
        this.page = page;
        this.answers = new Answers(sheets.words());
        this.results = results;
    }

    /** Writes it. */
    public void write() {
        page.setup().landscape();
        page.columns(32, 14, 14, 14, 14, 14, 14, 14, 30, 46);
        sheets.head(page, "checks", LAST);
        List<OptionAssessment> options = sheets.document().assessment().getOptions();
        new CheckGrid(sheets, page, answers).write(options);
        page.setup().breakAfter(page.rowIndex());
        for (OptionAssessment option : options) {
            writeOption(option);
        }
    }

    private void writeOption(OptionAssessment option) {
        String title = Titles.option(sheets.words(), option);
        writeFindings(title, option.getFindings());
        if (!option.getAfterWork().isEmpty()) {
            writeFindings(sheets.words().get("option.withWork", "title", title), option.getAfterWork());
        }
    }

    private void writeFindings(String title, List<Finding> findings) {
        page.gap(8);
        page.row().text(0, LAST, title, Looking.BAND);
        sheets.tableHead(page, "checks", LAST + 1, Set.of(2, 3, 4, 6));
        for (Finding finding : findings) {
            writeFinding(finding, results.getOrDefault(finding, new ResultCells(null, null, null, null)));
        }
    }

    private void writeFinding(Finding finding, ResultCells cells) {
        page.row().text(0, finding.getTitle(), Looking.LINE);
        writeAnswer(finding, cells.answer());
        writeFigure(2, finding.getValue(), cells.value());
        writeFigure(3, finding.getLimit(), cells.limit());
        writeFigure(4, finding.getMargin(), cells.margin());
        page.text(5, finding.getValue() == null ? "" : finding.getUnit(), Looking.LINE);
        page.number(6, finding.getChance(), Looking.LINE.format(Formats.WHOLE_PERCENT));
        page.text(7, finding.getRemeasure(), Looking.LINE_MUTED);
        page.text(8, finding.getCondition(), Looking.LINE_MUTED);
        page.text(9, finding.getText(), Looking.LINE_MUTED);
    }

    private void writeAnswer(Finding finding, @Nullable String cell) {
        Look look = Answers.look(finding, Looking.LINE);
        if (cell == null) {
            page.text(1, answers.outcome(finding), look);
        } else {
            page.formula(1, cell, answers.outcome(finding), look);
        }
    }

    private void writeFigure(int column, @Nullable Double value, @Nullable String cell) {
        if (value == null || cell == null) {
            page.number(column, value, value == null ? Looking.LINE : Looking.LINE.format(Formats.of(value)));
        } else {
            page.formula(column, cell, value, Looking.LINE.format(Formats.of(value)));
        }
    }
}
