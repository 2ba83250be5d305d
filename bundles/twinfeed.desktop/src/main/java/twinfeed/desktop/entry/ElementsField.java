// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import twinfeed.desktop.form.Choice;
import twinfeed.desktop.form.FieldFormat;
import twinfeed.desktop.form.InvalidFieldException;
import twinfeed.desktop.session.SurveyEdits;
import twinfeed.desktop.text.Words;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.CataloguePackage.Literals;
import twinfeed.model.catalogue.Element;
import twinfeed.units.Power;

/** The heating elements of a heater as one text: {@code 4.5 kW + 4.0 kW}. */
final class ElementsField implements EntryField {
    private final Words words;
    private final FieldFormat format;

    ElementsField(Words words) {
        this.words = words;
        this.format = new FieldFormat(words);
    }

    @Override
    public String name() {
        return Literals.HEATER__ELEMENTS.getName();
    }

    @Override
    public String label() {
        return words.get("label.Heater.elements").replace("&", "");
    }

    @Override
    public String help() {
        return words.get("entry.elements.help");
    }

    @Override
    public String hint() {
        return "kW + kW";
    }

    @Override
    public String show(EObject entry) {
        return elements(entry).stream()
                .map(element -> format.show(element.getPower()))
                .collect(Collectors.joining(" + "));
    }

    @SuppressWarnings("unchecked")
    private static List<Element> elements(EObject entry) {
        return (List<Element>) entry.eGet(Literals.HEATER__ELEMENTS);
    }

    @Override
    public void type(EObject entry, String typed, SurveyEdits edits) throws InvalidFieldException {
        List<Element> elements = new ArrayList<>();
        for (String part : typed.split("\\+")) {
            if (!part.isBlank()) {
                Element element = CatalogueFactory.eINSTANCE.createElement();
                element.setPower((Power) format.read(Literals.ELEMENT__POWER, part.strip()));
                elements.add(element);
            }
        }
        if (!typed.strip().equals(show(entry))) {
            edits.setAll(entry, Literals.HEATER__ELEMENTS, elements);
        }
    }

    @Override
    public List<Choice> choices() {
        return List.of();
    }
}
