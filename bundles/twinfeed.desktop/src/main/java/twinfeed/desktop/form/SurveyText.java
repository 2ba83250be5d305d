// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.jspecify.annotations.Nullable;
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

    /** In one language. */
    public SurveyText(Words words) {
        this.words = words;
        this.format = new FieldFormat(words);
    }

    /** All readings of a survey; pages without any are left out. */
    public List<Line> of(Survey survey) {
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
        String name = before + words.get("label." + item.path().key()).replace("&", "");
        if (item instanceof Several several && several.path().last() instanceof org.eclipse.emf.ecore.EReference) {
            int number = 0;
            for (EObject element : several.path().elements(owner)) {
                number++;
                Object title = several.columns().get(0).value(element);
                String piece = before
                        + (title == null
                                ? name + " " + number
                                : answer(several.columns().get(0), title));
                several.items().forEach(each -> add(lines, each, element, piece + ": "));
            }
            return;
        }
        @Nullable Object value = item.path().value(owner);
        String text = value == null ? "" : answer(item, value);
        if (!text.isEmpty()) {
            lines.add(new Line(false, name, text));
        }
    }

    private String answer(Item item, Object value) {
        boolean lines = item instanceof Field field && field.form() == FieldForm.LINES;
        return lines ? format.show(value).replaceAll("\\s*;\\s*", ", ") : answer(item.path(), value);
    }

    private String answer(ReadingPath path, Object value) {
        if (value instanceof List<?> several) {
            return String.join(
                    ", ", several.stream().map(each -> answer(path, each)).toList());
        }
        if (value instanceof Boolean yes) {
            return words.get(yes ? "choice.yes" : "choice.no");
        }
        if (value instanceof Enumerator literal) {
            String type = path.attribute().getEAttributeType().getName();
            @Nullable String known = words.find("choice." + type + "." + literal.getLiteral());
            return known == null ? literal.getLiteral() : known;
        }
        @Nullable String known = words.find("choice." + path.key() + "." + value);
        return known == null ? format.show(value) : known;
    }
}
