// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.workings;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.Outcome;
import twinfeed.workbook.formula.LiveFormula;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.OutcomeText;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** The rows under a working: value, limit, margin and answer, which follow from the working as far as it carries them. */
public final class ResultRows {
    private static final int VALUE = 2;

    /** Runs over into the empty cell beside it: a merged one in each of a thousand rows would cost more than the rows. */
    private static final CellStyle HEAD = SheetStyles.BOLD.single();

    private final QuoteSheets sheets;
    private final SheetWriter page;
    private final OutcomeText answers;

    public ResultRows(QuoteSheets sheets, SheetWriter page, OutcomeText answers) {
        this.sheets = sheets;
        this.page = page;
        this.answers = answers;
    }

    public ResultCells write(Finding finding, WorkingCells cells) {
        Double value = finding.getValue();
        if (value == null) {
            return new ResultCells(null, null, null, answer(finding, null));
        }
        String valueCell = figure("result.value", value, cells.last(value), finding);
        String valueAddress = page.address(VALUE);
        Double limit = finding.getLimit();
        Double margin = finding.getMargin();
        if (limit == null || margin == null) {
            return new ResultCells(valueCell, null, null, answer(finding, null));
        }
        String limitCell = figure("result.limit", limit, cells.limit(limit, finding.getUnit()), finding);
        String limitAddress = page.address(VALUE);
        String formula = margin(value, limit, margin, valueAddress, limitAddress);
        String marginCell = figure("result.margin", margin, formula, finding);
        return new ResultCells(
                valueCell,
                limitCell,
                marginCell,
                answer(finding, formula == null ? null : passes(page.address(VALUE), valueAddress, limitAddress)));
    }

    private String figure(String key, double value, @Nullable String formula, Finding finding) {
        CellStyle look = SheetStyles.LINE.format(NumberFormats.of(value)).lettering(CellStyle.Lettering.BOLD);
        page.row().text(0, sheets.words().get(key), HEAD);
        if (formula == null) {
            page.number(VALUE, value, look);
        } else {
            page.formula(VALUE, formula, value, look);
        }
        page.text(3, finding.getUnit(), SheetStyles.LINE);
        return page.fullAddress(VALUE);
    }

    /** The margin is the one or the other difference; which one shows by its figures. */
    private static @Nullable String margin(
            double value, double limit, double margin, String valueCell, String limitCell) {
        double near = LimitType.slack(value, limit);
        if (Math.abs(limit - value - margin) <= near) {
            return limitCell + "-" + valueCell;
        }
        return Math.abs(value - limit - margin) <= near ? valueCell + "-" + limitCell : null;
    }

    /** Passes and fails follow from the margin; what the tolerances make of it was sampled and stays as it is. */
    private String answer(Finding finding, @Nullable String passes) {
        page.row().text(0, sheets.words().get("result.answer"), HEAD);
        CellStyle look = OutcomeText.look(finding, SheetStyles.LINE);
        String text = answers.outcome(finding);
        if (passes != null && follows(finding)) {
            String formula =
                    "IF(" + passes + "," + quoted(finding, Outcome.PASSES) + "," + quoted(finding, Outcome.FAILS) + ")";
            page.formula(VALUE, formula, text, look);
        } else {
            page.text(VALUE, text, look);
        }
        page.text(3, finding.getCondition(), SheetStyles.MUTED.single());
        return page.fullAddress(VALUE);
    }

    /** The condition of passing, with the slack that the checks themselves have. */
    private static String passes(String margin, String value, String limit) {
        return margin + ">=-MAX(" + LimitType.RELATIVE_SLACK + "*MAX(ABS(" + value + "),ABS(" + limit + ")),"
                + LimitType.SLACK_AT_ZERO + ")";
    }

    private static boolean follows(Finding finding) {
        Double margin = finding.getMargin();
        return margin != null
                && ((finding.getOutcome() == Outcome.PASSES && margin >= 0)
                        || (finding.getOutcome() == Outcome.FAILS && margin < 0));
    }

    private String quoted(Finding finding, Outcome outcome) {
        return LiveFormula.text(answers.outcome(finding, outcome));
    }
}
