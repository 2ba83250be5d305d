// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.Locale;
import java.util.Map;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.engine.SourceText;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.units.text.Texts;

/**
 * A formula with the calculator that publishes it.
 *
 * @param calculator id of the calculator
 * @param texts its messages
 * @param formula the formula
 */
public record NamedFormula(String calculator, Texts texts, Formula formula) {
    /** Its name. */
    public String name() {
        return formula.name();
    }

    /**
     * Computes from what a person typed.
     *
     * @param typed texts by key, for example {@code power} to {@code 9.5kW}; what is not given has its default
     * @param locale language of the texts
     * @throws twinfeed.calculator.formula.ArgumentException if a key is unknown or missing, or a value is no quantity of its kind or out
     *     of range
     */
    public FormulaAnswer answer(Map<String, String> typed, Locale locale) {
        Answer answer = formula.apply(Arguments.parse(formula.parameters(), typed));
        SourceText sources = SourceText.in(locale);
        return new FormulaAnswer(
                answer.results().stream()
                        .map(each -> new FormulaAnswer.Result(
                                each.key(), text(locale, "result." + each.key()), each.kind(), each.si()))
                        .toList(),
                answer.trouble().isEmpty() ? FormulaAnswer.Note.NONE : note(locale, "trouble.", answer.trouble()),
                answer.warnings().stream()
                        .map(key -> note(locale, "warning.", key))
                        .toList(),
                answer.working().steps().stream()
                        .map(step -> StepMapper.record(
                                step,
                                text(locale, "meaning." + step.meaning()),
                                sources.of(step.source()),
                                step.origin()))
                        .toList());
    }

    private FormulaAnswer.Note note(Locale locale, String prefix, String key) {
        return new FormulaAnswer.Note(key, text(locale, prefix + key));
    }

    /** A text of the calculator, or of the common ones. */
    public String text(Locale locale, String key) {
        return (texts.has(key) ? texts : Runner.TEXTS).format(locale, key, Map.of());
    }
}
