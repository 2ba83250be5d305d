// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import twinfeed.document.Titles;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Step;
import twinfeed.workbook.formula.LiveFormula;
import twinfeed.workbook.sheet.CellNames;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.OutcomeText;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** Every working, its inputs in named cells, everything else in live formulas. */
public final class WorkingsSheet {
    private static final int VALUE = 2;
    private static final int LAST = 5;

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final CellNames names;
    private final OutcomeText answers;
    private final SharedWorkings shared = new SharedWorkings();
    private final Map<Finding, ResultCells> results = new IdentityHashMap<>();

    /** The sheet's writer. */
    public WorkingsSheet(QuoteSheets sheets, SheetWriter page) {
        this.sheets = sheets;
        this.page = page;
        this.names = new CellNames(sheets.book());
        this.answers = new OutcomeText(sheets.words());
    }

    /**
     * Writes it.
     *
     * @return where the results of findings with a working stand
     */
    public Map<Finding, ResultCells> write() {
        page.setup().landscape();
        page.columns(13, 46, 15, 10, 42, 40);
        sheets.head(page, "workings", LAST);
        page.row().text(0, LAST, sheets.words().get("workings.print"), SheetStyles.MUTED);
        page.setup().printOnly(page.rowIndex(), LAST);
        sheets.tableHead(page, "workings", LAST + 1, Set.of(VALUE));
        page.setup().header(page.rowIndex(), page.rowIndex());
        List<OptionAssessment> options = sheets.document().assessment().getOptions();
        for (int index = 0; index < options.size(); index++) {
            writeOption(index, options.get(index));
        }
        return results;
    }

    private void writeOption(int index, OptionAssessment option) {
        String title = Titles.option(sheets.words(), option);
        writeFindings("v_" + index + "_", title, option.getFindings());
        if (!option.getAfterWork().isEmpty()) {
            String done = sheets.words().get("option.withWork", "title", title);
            writeFindings("v_" + index + "_done_", done, option.getAfterWork());
        }
    }

    private void writeFindings(String prefix, String title, List<Finding> findings) {
        page.gap(8);
        page.row().text(0, LAST, title, SheetStyles.BAND);
        for (Finding finding : findings) {
            if (!finding.getSteps().isEmpty()) {
                writeFinding(prefix + finding.getKey() + "_", title, finding);
            }
        }
    }

    private void writeFinding(String prefix, String option, Finding finding) {
        page.gap(5);
        page.row().text(0, LAST, finding.getTitle(), SheetStyles.BOLD.border(CellStyle.Border.BELOW));
        if (finding.getText() != null) {
            page.row().text(0, LAST, finding.getText(), SheetStyles.MUTED);
        }
        SharedWorkings.Written known = shared.find(finding);
        if (known == null) {
            int row = page.rowIndex() + 2;
            WorkingCells cells = new WorkingCells();
            finding.getSteps().forEach(step -> writeStep(prefix, step, cells));
            known = new SharedWorkings.Written(option, row, cells);
            shared.add(finding, known);
        } else {
            Map<String, String> place = Map.of("option", known.option(), "row", String.valueOf(known.row()));
            page.row().text(0, LAST, sheets.words().get("workings.same", place), SheetStyles.LINE_MUTED);
        }
        results.put(finding, new ResultRows(sheets, page, answers).write(finding, known.cells()));
    }

    private void writeStep(String prefix, Step step, WorkingCells cells) {
        double value = step.getValue() == null ? 0 : step.getValue();
        page.row().text(0, step.getSymbol(), SheetStyles.LINE);
        page.text(1, step.getMeaning(), SheetStyles.LINE);
        String address = page.address(VALUE);
        String expression = step.getExpression();
        if (expression == null) {
            page.number(
                    VALUE,
                    value,
                    SheetStyles.LINE.format(NumberFormats.exact(value)).fill(CellStyle.Fill.INPUT));
            cells.put(step, names.add(prefix + step.getSymbol(), page.fullAddress(VALUE)), address);
        } else {
            writeFormula(expression, value, cells);
            cells.put(step, address, address);
        }
        page.text(3, step.getUnit(), SheetStyles.LINE);
        page.text(4, expression == null ? sheets.words().get("workings.input") : expression, SheetStyles.LINE_MUTED);
        page.text(5, step.getSource(), SheetStyles.LINE_MUTED);
    }

    private void writeFormula(String expression, double value, WorkingCells cells) {
        CellStyle look = SheetStyles.LINE.format(NumberFormats.of(value));
        String formula = LiveFormula.of(expression, cells::reference);
        if (formula.length() <= LiveFormula.LONGEST) {
            page.formula(VALUE, formula, value, look);
        } else {
            page.number(VALUE, value, look);
        }
    }
}
