// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.desktop.form.Page.Field;
import twinfeed.desktop.form.Page.Item;
import twinfeed.desktop.form.Page.Several;
import twinfeed.desktop.text.Words;
import twinfeed.model.survey.Survey;

/** A survey to be read and not changed: each reading that was taken, page by page, as the pages of a job ask it. */
public final class SurveyText {
    /**
     * A line.
     *
     * @param heading whether it begins a page
     * @param what the page, or what was asked; of a piece in a list after the piece's name
     * @param answer the reading; empty for a heading
     */
    public record Line(boolean heading, String what, String answer) {}

    private final Words words;
    private final FieldFormat format;
    private final Choices choices;

    private SurveyText(Words words, Choices choices) {
        this.words = words;
        this.format = new FieldFormat(words);
        this.choices = choices;
    }

    /**
     * All readings of a survey; pages without any are left out.
     *
     * @param calculators the calculators, which have words for answers
     * @param words the language
     */
    public static List<Line> of(Survey survey, List<Calculator> calculators, Words words) {
        return new SurveyText(words, Choices.of(survey, calculators, words)).lines(survey);
    }

    private List<Line> lines(Survey survey) {
        List<Line> lines = new ArrayList<>();
        for (Page page : SurveyPages.all()) {
            if (page.owner().isInstance(survey)) {
                List<Line> readings = new ArrayList<>();
                page.sections().forEach(section -> section.items().forEach(item -> add(readings, item, survey, "")));
                if (!readings.isEmpty()) {
                    lines.add(new Line(true, title(page), ""));
                    lines.addAll(readings);
                }
            }
        }
        return lines;
    }

    private String title(Page page) {
        return Objects.requireNonNullElse(words.find("page." + page.key()), page.key());
    }

    private void add(List<Line> lines, Item item, EObject owner, String before) {
        String name = before + label(item.path());
        if (item instanceof Several several && several.path().last() instanceof EReference) {
            int number = 0;
            for (EObject element : several.path().elements(owner)) {
                number++;
                ReadingPath title = several.columns().get(0);
                @Nullable Object called = title.value(element);
                String piece = called == null ? name + " " + number : before + answer(title, called);
                add(lines, several, element, piece + ": ");
            }
            return;
        }
        @Nullable Object value = item.path().value(owner);
        String answer = value == null ? "" : answer(item, value);
        if (!answer.isEmpty()) {
            lines.add(new Line(false, name, answer));
        }
    }

    private void add(List<Line> lines, Several several, EObject element, String before) {
        if (!several.grows()) {
            // The answer to a question about a fault is given elsewhere, so it is a column only; no entry means the
            // model's default, yes.
            several.columns().stream()
                    .skip(1)
                    .forEach(column -> lines.add(
                            new Line(false, before + label(column), answer(column, element.eGet(column.last())))));
        }
        several.items().forEach(each -> add(lines, each, element, before));
    }

    private String label(ReadingPath path) {
        return words.get("label." + path.key()).replace("&", "");
    }

    private String answer(Item item, Object value) {
        boolean several = item instanceof Field field && field.form() == FieldForm.LINES;
        return several ? format.show(value).replaceAll("\\s*;\\s*", ", ") : answer(item.path(), value);
    }

    private String answer(ReadingPath path, Object value) {
        if (value instanceof List<?> several) {
            return several.stream().map(each -> answer(path, each)).collect(Collectors.joining(", "));
        }
        return choices.text(path.attribute(), value).orElseGet(() -> format.show(value));
    }
}
