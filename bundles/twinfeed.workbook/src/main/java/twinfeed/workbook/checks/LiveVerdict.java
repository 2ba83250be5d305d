// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.checks;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.workbook.formula.LiveFormula;
import twinfeed.workbook.sheet.OutcomeText;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.workings.ResultCells;

/**
 * The verdict of a heater as a formula. It is the program's as long as no answer changes; where somebody changes a reading in the workbook and a
 * check that decides now fails, the heater does not suit; and where answers change otherwise, it has to be judged again, since the work that is
 * least costly, and how close the answers are, only the program finds.
 */
final class LiveVerdict {
    private final QuoteSheets sheets;
    private final OutcomeText answers;
    private final Map<Finding, ResultCells> results;

    LiveVerdict(QuoteSheets sheets, OutcomeText answers, Map<Finding, ResultCells> results) {
        this.sheets = sheets;
        this.answers = answers;
        this.results = results;
    }

    /** How many answers of a heater are no longer those of the quote; null where none can change. */
    @Nullable
    String changes(OptionAssessment option) {
        String changes = sum(Stream.concat(option.getFindings().stream(), option.getAfterWork().stream())
                .flatMap(finding -> compared(finding, "<>", answers.outcome(finding)))
                .toList());
        return changes == null || changes.length() > LiveFormula.LONGEST ? null : changes;
    }

    /**
     * The verdict.
     *
     * @param changes the cell that counts the changed answers
     */
    String verdict(OptionAssessment option, String changes) {
        String fails = sum(last(option)
                .filter(finding -> Check.deciding(finding.getKind()))
                .flatMap(finding -> compared(finding, "=", answers.outcome(finding, Outcome.FAILS)))
                .toList());
        String anew = LiveFormula.text(sheets.words().get("verdict.anew"));
        String changed = fails == null
                ? anew
                : "IF(" + fails + ">0," + LiveFormula.text(sheets.words().get("verdict.fails")) + "," + anew + ")";
        return "IF(" + changes + "=0," + LiveFormula.text(answers.verdict(option.getVerdict())) + "," + changed + ")";
    }

    /** The answers on which the verdict rests: those with the work done, and where the work changes none, those as found. */
    private static Stream<Finding> last(OptionAssessment option) {
        return (option.getAfterWork().isEmpty() ? option.getFindings() : option.getAfterWork()).stream();
    }

    private Stream<String> compared(Finding finding, String sign, String answer) {
        ResultCells cells = results.get(finding);
        return cells == null || cells.answer() == null || cells.margin() == null
                ? Stream.empty()
                : Stream.of("(" + cells.answer() + sign + LiveFormula.text(answer) + ")");
    }

    /** The sum of yes and no as numbers. */
    private static @Nullable String sum(List<String> terms) {
        return terms.isEmpty() ? null : "(" + String.join("+", terms) + ")";
    }
}
