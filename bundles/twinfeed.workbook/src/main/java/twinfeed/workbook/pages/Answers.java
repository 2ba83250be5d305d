// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import org.jspecify.annotations.Nullable;
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
        return words.get(
                "outcome." + (finding.isSetOutcome() ? finding.getOutcome() : Outcome.CANNOT_TELL).getLiteral());
    }

    String outcome(Outcome outcome) {
        return words.get("outcome." + outcome.getLiteral());
    }

    /** The verdict with its sign. */
    String verdict(@Nullable Verdict verdict) {
        return words.get("verdict." + (verdict == null ? Verdict.CANNOT_TELL : verdict).getLiteral());
    }

    static Look look(Finding finding, Look base) {
        if (!finding.isSetOutcome()) {
            return doubt(base);
        }
        return switch (finding.getOutcome()) {
            case PASSES -> good(base);
            case FAILS -> base.ink(Look.Ink.BAD).paper(Look.Paper.BAD);
            case TOO_CLOSE, CANNOT_TELL -> doubt(base);
            case NOT_APPLICABLE -> base.ink(Look.Ink.MUTED).paper(Look.Paper.GREY);
        };
    }

    static Look look(@Nullable Verdict verdict, Look base) {
        if (verdict == null) {
            return doubt(base);
        }
        return switch (verdict) {
            case SUITS, SUITS_WITH_WORK -> good(base);
            case DOES_NOT_SUIT -> base.ink(Look.Ink.BAD).paper(Look.Paper.BAD);
            case CANNOT_TELL -> doubt(base);
        };
    }

    private static Look good(Look base) {
        return base.ink(Look.Ink.GOOD).paper(Look.Paper.GOOD);
    }

    private static Look doubt(Look base) {
        return base.ink(Look.Ink.DOUBT).paper(Look.Paper.DOUBT);
    }
}
