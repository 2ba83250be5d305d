// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.checks;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Titles;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.OutcomeText;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.workings.ResultCells;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** Heaters by checks, and each answer in figures. */
public final class ChecksSheet {
    private static final int LAST = 9;

    /** The last column of the grid, which alone is printed. */
    private static final int GRID_LAST = 7;

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final OutcomeText answers;
    private final Map<Finding, ResultCells> results;

    /**
     * The sheet's writer.
     *
     * @param results where the results of the workings stand
     */
    public ChecksSheet(QuoteSheets sheets, SheetWriter page, Map<Finding, ResultCells> results) {
        this.sheets = sheets;
        this.page = page;
        this.answers = new OutcomeText(sheets.words());
        this.results = results;
    }

    /**
     * Writes it.
     *
     * @return the cells, as seen from any sheet, that count the answers which are no longer those of the quote
     */
    public List<String> write() {
        page.setup().landscape();
        page.columns(32, 14, 14, 14, 14, 14, 14, 14, 30, 46);
        sheets.head(page, "checks", GRID_LAST);
        List<OptionAssessment> options = sheets.document().assessment().getOptions();
        CheckGrid grid = new CheckGrid(sheets, page, answers, new LiveVerdict(sheets, answers, results));
        grid.write(options);
        page.gap(6);
        page.row().text(0, GRID_LAST, sheets.words().get("checks.print"), SheetStyles.MUTED);
        page.setup().pages(2).printOnly(page.rowIndex(), GRID_LAST);
        for (OptionAssessment option : options) {
            writeOption(option);
        }
        return grid.changes();
    }

    private void writeOption(OptionAssessment option) {
        String title = Titles.option(sheets.words(), option);
        writeFindings(title, option.getFindings());
        if (!option.getAfterWork().isEmpty()) {
            List<Finding> changed = option.getAfterWork().stream()
                    .filter(done -> !asBefore(option, done))
                    .toList();
            writeFindings(sheets.words().get("option.withWork", "title", title), changed);
            if (changed.size() < option.getAfterWork().size()) {
                page.row().text(0, LAST, sheets.words().get("checks.asBefore"), SheetStyles.MUTED);
            }
        }
    }

    /** Whether the work leaves an answer as it was: then it has no working of its own and rests on the same cells. */
    private boolean asBefore(OptionAssessment option, Finding done) {
        return done.getSteps().isEmpty()
                && option.getFindings().stream()
                        .anyMatch(before -> before.getKey().equals(done.getKey())
                                && before.getOutcome() == done.getOutcome()
                                && Objects.equals(before.getValue(), done.getValue())
                                && Objects.equals(before.getLimit(), done.getLimit())
                                && Objects.equals(before.getChance(), done.getChance()));
    }

    private void writeFindings(String title, List<Finding> findings) {
        page.gap(8);
        page.row().text(0, LAST, title, SheetStyles.BAND);
        sheets.tableHead(page, "checks", LAST + 1, Set.of(2, 3, 4, 6));
        for (Finding finding : findings) {
            writeFinding(finding, results.getOrDefault(finding, new ResultCells(null, null, null, null)));
        }
    }

    private void writeFinding(Finding finding, ResultCells cells) {
        page.row().text(0, finding.getTitle(), SheetStyles.LINE);
        writeAnswer(finding, cells.answer());
        writeFigure(2, finding.getValue(), cells.value());
        writeFigure(3, finding.getLimit(), cells.limit());
        writeFigure(4, finding.getMargin(), cells.margin());
        page.text(5, finding.getValue() == null ? "" : finding.getUnit(), SheetStyles.LINE);
        page.number(6, finding.getChance(), SheetStyles.LINE.format(NumberFormats.WHOLE_PERCENT));
        page.text(7, finding.getRemeasure(), SheetStyles.LINE_MUTED);
        page.text(8, finding.getCondition(), SheetStyles.LINE_MUTED);
        page.text(9, finding.getText(), SheetStyles.LINE_MUTED);
    }

    private void writeAnswer(Finding finding, @Nullable String cell) {
        CellStyle look = OutcomeText.look(finding, SheetStyles.LINE);
        if (cell == null) {
            page.text(1, answers.outcome(finding), look);
        } else {
            page.formula(1, cell, answers.outcome(finding), look);
        }
    }

    private void writeFigure(int column, @Nullable Double value, @Nullable String cell) {
        if (value == null || cell == null) {
            page.number(
                    column, value, value == null ? SheetStyles.LINE : SheetStyles.LINE.format(NumberFormats.of(value)));
        } else {
            page.formula(column, cell, value, SheetStyles.LINE.format(NumberFormats.of(value)));
        }
    }
}
