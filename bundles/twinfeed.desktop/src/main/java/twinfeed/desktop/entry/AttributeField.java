// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.form.Choice;
import twinfeed.desktop.form.FieldDocumentation;
import twinfeed.desktop.form.FieldFormat;
import twinfeed.desktop.form.FieldUnit;
import twinfeed.desktop.form.InvalidFieldException;
import twinfeed.desktop.session.SurveyEdits;
import twinfeed.desktop.text.Decimals;
import twinfeed.desktop.text.Words;
import twinfeed.units.text.NumberText;

/** A value that is an attribute of the model: text, exact decimal, whole number, day, quantity, or one of a few answers. */
final class AttributeField implements EntryField {
    private final EAttribute attribute;
    private final Words words;
    private final FieldFormat format;
    private final List<Choice> choices;

    /**
     * A field.
     *
     * @param known answers of a text that is one of a few; empty where any text may stand
     */
    AttributeField(EAttribute attribute, Words words, List<Choice> known) {
        this.attribute = attribute;
        this.words = words;
        this.format = new FieldFormat(words);
        this.choices = known.isEmpty() ? answers() : known;
    }

    private List<Choice> answers() {
        List<Choice> answers = new ArrayList<>();
        if (attribute.getEAttributeType() instanceof EEnum literals) {
            answers.add(new Choice(null, words.get("choice.none")));
            literals.getELiterals()
                    .forEach(each -> answers.add(new Choice(
                            each.getInstance(),
                            Objects.requireNonNullElse(
                                    words.find("choice." + literals.getName() + "." + each.getLiteral()),
                                    each.getLiteral()))));
        } else if (attribute.getEAttributeType().getInstanceClass() == Boolean.class) {
            answers.add(new Choice(null, words.get("choice.none")));
            answers.add(new Choice(true, words.get("choice.yes")));
            answers.add(new Choice(false, words.get("choice.no")));
        }
        return List.copyOf(answers);
    }

    @Override
    public String name() {
        return attribute.getName();
    }

    private String key() {
        return attribute.getEContainingClass().getName() + "." + attribute.getName();
    }

    @Override
    public String label() {
        return words.get("label." + key()).replace("&", "");
    }

    @Override
    public String help() {
        return FieldDocumentation.ofModel(words.locale()).help(attribute);
    }

    @Override
    public String hint() {
        return FieldUnit.of(attribute);
    }

    @Override
    public String show(EObject entry) {
        @Nullable Object value = entry.eIsSet(attribute) ? entry.eGet(attribute) : null;
        if (!choices.isEmpty()) {
            return choices.stream()
                    .filter(each -> Objects.equals(each.value(), value))
                    .map(each -> each.value() == null ? "" : each.text())
                    .findFirst()
                    .orElse(value == null ? "" : value.toString());
        }
        return value instanceof BigDecimal number ? new NumberText(words.locale()).pointed(number) : format.show(value);
    }

    @Override
    public void type(EObject entry, String typed, SurveyEdits edits) throws InvalidFieldException {
        edits.set(entry, List.of(attribute), value(typed.strip()));
    }

    private @Nullable Object value(String typed) throws InvalidFieldException {
        if (!choices.isEmpty()) {
            return choices.stream()
                    .filter(each -> each.text().equals(typed))
                    .findFirst()
                    .map(Choice::value)
                    .orElse(null);
        }
        if (typed.isEmpty()) {
            return null;
        }
        if (attribute.getEAttributeType().getInstanceClass() == BigDecimal.class) {
            return Decimals.read(typed, words.locale())
                    .orElseThrow(
                            () -> new InvalidFieldException(words.format("entry.decimal", Map.of("typed", typed))));
        }
        return format.read(attribute, typed);
    }

    @Override
    public List<Choice> choices() {
        return choices;
    }
}
