// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.model.check.ModelPath;

/**
 * The way from an object to one of its readings, over objects that may not be there yet.
 *
 * @param text the way as text, for example {@code water.test.flow}
 * @param steps the features of it
 */
public record ReadingPath(String text, List<EStructuralFeature> steps) {
    public ReadingPath {
        steps = List.copyOf(steps);
    }

    /**
     * The path of a text.
     *
     * @throws IllegalArgumentException if the model has no such feature
     */
    public static ReadingPath of(EClass root, String text) {
        List<EStructuralFeature> steps = new ArrayList<>();
        EClass owner = root;
        for (String name : text.split("\\.")) {
            EStructuralFeature feature = owner.getEStructuralFeature(name);
            if (feature == null) {
                throw new IllegalArgumentException(owner.getName() + " has no " + name);
            }
            steps.add(feature);
            if (feature instanceof EReference reference) {
                owner = reference.getEReferenceType();
            }
        }
        return new ReadingPath(text, steps);
    }

    /** The reading's path in the model: what tells it from all others. */
    public String in(EObject root) {
        String before = ModelPath.of(root);
        return before.isEmpty() ? text : before + "." + text;
    }

    /** The feature at its end. */
    public EStructuralFeature last() {
        return steps.get(steps.size() - 1);
    }

    /** The attribute at its end. */
    public EAttribute attribute() {
        return (EAttribute) last();
    }

    /** The key of its texts: class and feature, for example {@code WaterTest.flow}. */
    public String key() {
        return last().getEContainingClass().getName() + "." + last().getName();
    }

    /** The object that holds the reading, if it is there. */
    public Optional<EObject> owner(EObject root) {
        EObject owner = root;
        for (EStructuralFeature step : steps.subList(0, steps.size() - 1)) {
            if (!(owner.eGet(step) instanceof EObject next)) {
                return Optional.empty();
            }
            owner = next;
        }
        return Optional.of(owner);
    }

    /** The reading; null if it was not taken. */
    public @Nullable Object value(EObject root) {
        return owner(root)
                .filter(owner -> last().isMany() || owner.eIsSet(last()))
                .map(owner -> owner.eGet(last()))
                .orElse(null);
    }

    /** The elements, for a path that ends in a list. */
    @SuppressWarnings("unchecked")
    public List<EObject> elements(EObject root) {
        Object value = value(root);
        return value == null ? List.of() : (List<EObject>) value;
    }
}
