// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.sheet;

import twinfeed.calculator.Check;
import twinfeed.document.DocumentTexts;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.workbook.writer.CellStyle;

/** Answers in words, with a sign and a colour: never by colour alone. */
public final class OutcomeText {
    private final DocumentTexts words;

    public OutcomeText(DocumentTexts words) {
        this.words = words;
    }

    /** The outcome with its sign. */
    public String outcome(Finding finding) {
        return outcome(finding, finding.getOutcome());
    }

    /** An outcome that a finding may have, with its sign: a check that does not decide falls short or advises where another one fails. */
    public String outcome(Finding finding, Outcome outcome) {
        if (outcome == Outcome.FAILS && !Check.deciding(finding.getKind())) {
            return words.get(finding.getKind() == FindingClass.ADVICE ? "outcome.advice" : "outcome.shortfall");
        }
        return words.get("outcome." + outcome.getLiteral());
    }

    /** The verdict with its sign. */
    public String verdict(Verdict verdict) {
        return words.get("verdict." + verdict.getLiteral());
    }

    public static CellStyle look(Finding finding, CellStyle base) {
        return switch (finding.getOutcome()) {
            case PASSES -> good(base);
            case FAILS -> Check.deciding(finding.getKind()) ? bad(base) : doubt(base);
            case TOO_CLOSE, CANNOT_TELL, NOT_CHECKED -> doubt(base);
            case NOT_APPLICABLE -> base.lettering(CellStyle.Lettering.MUTED).fill(CellStyle.Fill.GREY);
        };
    }

    public static CellStyle look(Verdict verdict, CellStyle base) {
        return switch (verdict) {
            case SUITS, SUITS_WITH_WORK -> good(base);
            case DOES_NOT_SUIT -> bad(base);
            case NOT_AS_IT_IS, CANNOT_TELL, NOT_CHECKED -> doubt(base);
        };
    }

    private static CellStyle bad(CellStyle base) {
        return base.lettering(CellStyle.Lettering.BAD).fill(CellStyle.Fill.BAD);
    }

    private static CellStyle good(CellStyle base) {
        return base.lettering(CellStyle.Lettering.GOOD).fill(CellStyle.Fill.GOOD);
    }

    private static CellStyle doubt(CellStyle base) {
        return base.lettering(CellStyle.Lettering.DOUBT).fill(CellStyle.Fill.DOUBT);
    }
}
