// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.calculator.Readings;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Step;
import twinfeed.model.survey.Survey;
import twinfeed.units.Quantity;

/**
 * The readings of things that work renews with the same figure, such as the rating of a new device in place of one of 40 A: what is read
 * at the old one says nothing about the new one any more. Told by the value that the work puts there being another object.
 */
final class RenewedReadings {
    private final Set<String> paths = new HashSet<>();

    RenewedReadings(Survey survey, List<Remedy> works) {
        if (works.isEmpty()) {
            return;
        }
        Map<String, Quantity> before = new HashMap<>();
        collect(survey, "survey", before);
        Survey edited = EcoreUtil.copy(survey);
        works.forEach(work -> work.edit().accept(edited));
        Map<String, Quantity> after = new HashMap<>();
        collect(edited, "survey", after);
        after.forEach((path, value) -> {
            Quantity old = before.get(path);
            if (old != null && old != value && old.si() == value.si()) {
                paths.add(path);
            }
        });
    }

    /** The origin of a line of a working with the work done. */
    String origin(Step step) {
        return paths.contains(step.origin()) ? Origin.RENEWED + step.origin() : step.origin();
    }

    private static void collect(EObject owner, String path, Map<String, Quantity> found) {
        for (EAttribute attribute : owner.eClass().getEAllAttributes()) {
            if (!attribute.isMany() && owner.eGet(attribute) instanceof Quantity value) {
                found.put(path + "." + attribute.getName(), value);
            }
        }
        for (EReference reference : owner.eClass().getEAllContainments()) {
            Object value = owner.eGet(reference);
            if (value instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    EObject element = (EObject) list.get(i);
                    collect(element, path + "." + reference.getName() + "[" + Readings.name(element, i) + "]", found);
                }
            } else if (value instanceof EObject element) {
                collect(element, path + "." + reference.getName(), found);
            }
        }
    }
}
