// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import twinfeed.document.Words;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.workbook.book.Look;

/** Answers in words, with a sign and a colour: never by colour alone. */
final class Answers {
    private final Words words;

    Answers(Words words) {
        this.words = words;
    }

    /** The outcome with its sign. */
    String outcome(Finding finding) {
        return outcome(finding.getOutcome());
    }

    String outcome(Outcome outcome) {
        return words.get("outcome." + outcome.getLiteral());
    }

    /** The verdict with its sign. */
    String verdict(Verdict verdict) {
        return words.get("verdict." + verdict.getLiteral());
    }

    static Look look(Finding finding, Look base) {
        return switch (finding.getOutcome()) {
            case PASSES -> good(base);
            case FAILS -> base.ink(Look.Ink.BAD).paper(Look.Paper.BAD);
            case TOO_CLOSE, CANNOT_TELL, NOT_CHECKED -> doubt(base);
            case NOT_APPLICABLE -> base.ink(Look.Ink.MUTED).paper(Look.Paper.GREY);
        };
    }

    static Look look(Verdict verdict, Look base) {
        return switch (verdict) {
            case SUITS, SUITS_WITH_WORK -> good(base);
            case DOES_NOT_SUIT, NOT_AS_IT_IS -> base.ink(Look.Ink.BAD).paper(Look.Paper.BAD);
            case CANNOT_TELL, NOT_CHECKED -> doubt(base);
        };
    }

    private static Look good(Look base) {
        return base.ink(Look.Ink.GOOD).paper(Look.Paper.GOOD);
    }

    private static Look doubt(Look base) {
        return base.ink(Look.Ink.DOUBT).paper(Look.Paper.DOUBT);
    }
}
