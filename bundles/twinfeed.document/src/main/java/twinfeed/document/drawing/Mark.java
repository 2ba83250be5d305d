// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import java.util.Locale;
import twinfeed.calculator.Check;
import twinfeed.calculator.engine.Runner;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.units.text.Texts;

/**
 * How an answer is shown: sign, word and colour together, so that none of them carries the meaning alone.
 *
 * @param sign the sign
 * @param word the word
 * @param tone the colour
 */
public record Mark(String sign, String word, Tone tone) {

    /** The mark of a check's outcome. */
    public static Mark of(Outcome outcome, Locale locale) {
        String word = Runner.TEXTS.get(locale, "outcome." + Texts.key(outcome));
        return switch (outcome) {
            case PASSES -> new Mark("\u2713", word, Tone.GOOD);
            case FAILS -> new Mark("\u2717", word, Tone.BAD);
            case NOT_CHECKED -> new Mark("\u25cb", word, Tone.DOUBT);
            case TOO_CLOSE -> new Mark("\u2248", word, Tone.DOUBT);
            case CANNOT_TELL -> new Mark("?", word, Tone.DOUBT);
            case NOT_APPLICABLE -> new Mark("\u2013", word, Tone.QUIET);
        };
    }

    /**
     * The mark of a finding. Only a check that rules an option out fails with a cross: one of performance falls short, and one that only
     * advises advises, or a heater that suits would stand over a failure that nobody has to put right.
     */
    public static Mark of(Finding finding, Locale locale) {
        if (finding.getOutcome() != Outcome.FAILS || Check.deciding(finding.getKind())) {
            return of(finding.getOutcome(), locale);
        }
        return finding.getKind() == FindingClass.ADVICE
                ? new Mark("\u25b8", Runner.TEXTS.get(locale, "kind.advice"), Tone.ADVICE)
                : new Mark("!", Runner.TEXTS.get(locale, "outcome.shortfall"), Tone.DOUBT);
    }

    /** The mark of an option's verdict. */
    public static Mark of(Verdict verdict, Locale locale) {
        String word = Runner.TEXTS.get(locale, "verdict." + Texts.key(verdict));
        return switch (verdict) {
            case SUITS -> new Mark("\u2713", word, Tone.GOOD);
            case SUITS_WITH_WORK -> new Mark("+", word, Tone.GOOD);
            case DOES_NOT_SUIT -> new Mark("\u2717", word, Tone.BAD);
            case NOT_AS_IT_IS, CANNOT_TELL, NOT_CHECKED -> new Mark("?", word, Tone.DOUBT);
        };
    }

    /** Sign and word. */
    @Override
    public String toString() {
        return sign + " " + word;
    }
}
