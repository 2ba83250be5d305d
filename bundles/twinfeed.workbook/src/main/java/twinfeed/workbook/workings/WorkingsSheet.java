// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Titles;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Step;
import twinfeed.workbook.formula.LiveFormula;
import twinfeed.workbook.inputs.Inputs;
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

    /** The most rounds of a search that have a column. */
    private static final int ROUNDS = 8;

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final CellNames names;
    private final OutcomeText answers;
    private final Inputs inputs;
    private final SharedLines shared = new SharedLines();
    private final Map<Finding, ResultCells> results = new IdentityHashMap<>();
    private final Map<Finding, Integer> rows = new IdentityHashMap<>();
    private final Map<String, Finding> written = new HashMap<>();
    private RoundTable rounds;
    private boolean begun;

    /** The sheet's writer. */
    public WorkingsSheet(QuoteSheets sheets, SheetWriter page, Inputs inputs, CellNames names) {
        this.sheets = sheets;
        this.page = page;
        this.inputs = inputs;
        this.names = names;
        this.rounds = new RoundTable(sheets, page);
        this.answers = new OutcomeText(sheets.words());
    }

    /**
     * Writes it.
     *
     * @return where the results of findings with a working stand
     */
    public Map<Finding, ResultCells> write() {
        page.setup().landscape();
        page.plainRows().shareFormulas();
        page.columns(13, 46, 15, 10, 42, 40, 15, 15, 15, 15, 15, 15, 15);
        sheets.head(page, "workings", LAST);
        page.row().text(0, LAST, sheets.words().get("workings.print"), SheetStyles.MUTED);
        page.gap(4);
        page.setup().printNothing(page.rowIndex());
        sheets.tableHead(page, "workings", LAST + 1, Set.of(VALUE));
        for (int round = 2; round <= ROUNDS; round++) {
            page.text(
                    LAST + round - 1,
                    sheets.words().get("workings.round", "round", String.valueOf(round)),
                    SheetStyles.HEAD.align(CellStyle.Alignment.RIGHT));
        }
        page.setup().header(page.rowIndex(), page.rowIndex());
        List<OptionAssessment> options = sheets.document().assessment().getOptions();
        for (int index = 0; index < options.size(); index++) {
            writeOption(index, options.get(index));
        }
        return results;
    }

    /** The row at which each working begins, from 0. */
    public Map<Finding, Integer> rows() {
        return rows;
    }

    private void writeOption(int index, OptionAssessment option) {
        String title = Titles.option(sheets.words(), option);
        writeFindings("v_" + index + "_", title, option.getFindings());
        if (!option.getAfterWork().isEmpty()) {
            String done = sheets.words().get("option.withWork", "title", title);
            writeFindings("v_" + index + "_done_", done, option.getAfterWork());
            option.getAfterWork().forEach(finding -> carry(option, finding));
        }
    }

    /** What the work leaves as it was has no lines of its own: its figures are those of the house as it is. */
    private void carry(OptionAssessment option, Finding done) {
        if (done.getSteps().isEmpty()) {
            option.getFindings().stream()
                    .filter(before -> before.getKey().equals(done.getKey())
                            && Objects.equals(before.getValue(), done.getValue())
                            && Objects.equals(before.getLimit(), done.getLimit())
                            && before.getOutcome() == done.getOutcome())
                    .map(results::get)
                    .filter(Objects::nonNull)
                    .findFirst()
                    .ifPresent(cells -> results.put(done, cells));
        }
    }

    private void writeFindings(String prefix, String title, List<Finding> findings) {
        page.gap(8);
        page.row().text(0, LAST, title, SheetStyles.BAND);
        for (Finding finding : findings) {
            if (!finding.getSteps().isEmpty()) {
                writeFinding(prefix + finding.getKey() + "_", finding);
            }
        }
    }

    private void writeFinding(String prefix, Finding finding) {
        WorkingCells cells = new WorkingCells();
        rounds = new RoundTable(sheets, page);
        begun = false;
        for (Step step : finding.getSteps()) {
            if (RoundTable.has(step)) {
                writeRound(finding, step, cells);
            } else {
                rounds.write();
                writeStep(prefix, finding, step, cells);
            }
        }
        rounds.write();
        String same = same(finding, cells);
        Finding known = begun ? null : written.get(same);
        if (known != null) {
            // All its lines stand above, and so does its answer.
            rows.put(finding, Objects.requireNonNull(rows.get(known)));
            results.put(finding, Objects.requireNonNull(results.get(known)));
            return;
        }
        begin(finding);
        written.putIfAbsent(same, finding);
        if (cells.isAllAbove()) {
            page.row().text(0, LAST, sheets.words().get("workings.above", "line", cells.last()), SheetStyles.MUTED);
        }
        results.put(finding, new ResultRows(sheets, page, answers).write(finding, cells));
    }

    private static String same(Finding finding, WorkingCells cells) {
        return String.join(
                "|",
                finding.getKey(),
                cells.last(),
                String.valueOf(finding.getValue()),
                String.valueOf(finding.getLimit()),
                String.valueOf(finding.getOutcome()),
                finding.getCondition());
    }

    /** Begins the working on the sheet, with its first line that does not stand above. */
    private void begin(Finding finding) {
        if (!begun) {
            begun = true;
            page.gap(5);
            page.row().text(0, finding.getTitle(), SheetStyles.BOLD.single());
            rows.put(finding, page.rowIndex());
        }
    }

    /** A line whose formula stands above already, with the same cells, is not written again: everybody refers to that one. */
    private void writeStep(String prefix, Finding finding, Step step, WorkingCells cells) {
        double value = step.getValue() == null ? 0 : step.getValue();
        String expression = step.getExpression();
        String formula = expression == null ? inputs.formula(step) : formula(expression, cells);
        String identity = formula == null ? SharedLines.input(finding.getKey(), step) : formula;
        String known = SharedLines.isCell(identity) ? identity : shared.find(identity);
        if (known != null) {
            cells.putKnown(step, known);
            return;
        }
        begin(finding);
        page.row().text(0, step.getSymbol(), SheetStyles.LINE);
        page.text(1, step.getMeaning(), SheetStyles.LINE);
        String address = page.address(VALUE);
        shared.add(identity, address);
        cells.put(step, address);
        if (formula == null) {
            page.number(
                    VALUE,
                    value,
                    SheetStyles.LINE.format(NumberFormats.exact(value)).fill(CellStyle.Fill.INPUT));
            if (expression == null) {
                names.add(prefix + step.getSymbol(), page.fullAddress(VALUE));
            }
        } else {
            page.formula(VALUE, formula, value, SheetStyles.LINE.format(NumberFormats.of(value)));
        }
        text(3, step.getUnit(), SheetStyles.LINE);
        String how = expression != null
                ? LineText.of(expression, sheets.words())
                : sheets.words().get(formula == null ? "workings.input" : "workings.fromInputs");
        text(4, how, SheetStyles.LINE_MUTED);
        text(5, step.getSource(), SheetStyles.LINE_MUTED);
    }

    /** An empty cell is not written: there are thousands of lines. */
    private void text(int column, @Nullable String text, CellStyle look) {
        if (text != null && !text.isEmpty()) {
            page.text(column, text, look);
        }
    }

    private void writeRound(Finding finding, Step step, WorkingCells cells) {
        String formula = LiveFormula.of(step.getExpression(), cells::reference);
        String known = SharedLines.isCell(formula) ? formula : shared.find(formula);
        if (known == null) {
            begin(finding);
            String address = rounds.add(step, formula);
            shared.add(formula, address);
            cells.put(step, address);
        } else {
            cells.putKnown(step, known);
        }
    }

    /** The formula of an expression; absent if it is longer than every spreadsheet program takes. */
    private static @Nullable String formula(String expression, WorkingCells cells) {
        String formula = LiveFormula.of(expression, cells::reference);
        return formula.length() <= LiveFormula.LONGEST ? formula : null;
    }
}
