// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;

/**
 * Where something stands in a job or a catalogue: the names of the features that lead to it, with dots between. An element of
 * a list is called by its name or id, else by its number from 1: {@code survey.water.segments[rising main].bore},
 * {@code heaters[h95].power}.
 */
public final class ModelPath {
    private static final List<String> FILES = List.of("Job", "Catalogue", "Quote");

    private ModelPath() {}

    /** The path of an object; empty for the root of a file, {@code survey} for a survey that is in no job. */
    public static String of(EObject object) {
        EObject container = object.eContainer();
        EStructuralFeature feature = object.eContainingFeature();
        if (container == null || feature == null) {
            String name = object.eClass().getName();
            return FILES.contains(name) ? "" : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
        }
        String path = join(of(container), feature.getName());
        return feature.isMany() ? path + "[" + label(object, container, feature) + "]" : path;
    }

    /** The path of a feature of an object. */
    public static String of(EObject object, EStructuralFeature feature) {
        return join(of(object), feature.getName());
    }

    /** What an object is called: its name, else its id; empty if it has neither. */
    public static String name(EObject object) {
        String name = text(object, "name");
        String called = name == null ? text(object, "id") : name;
        return called == null ? "" : called;
    }

    private static String label(EObject object, EObject container, EStructuralFeature feature) {
        String name = name(object);
        return name.isEmpty() ? String.valueOf(((List<?>) container.eGet(feature)).indexOf(object) + 1) : name;
    }

    private static @Nullable String text(EObject object, String feature) {
        EStructuralFeature found = object.eClass().getEStructuralFeature(feature);
        return found != null && object.eGet(found) instanceof String text ? text : null;
    }

    private static String join(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
