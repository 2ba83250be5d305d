// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.NearestName;

/** Names that must be unique, and names that must lead somewhere. */
final class NameRules {
    private NameRules() {}

    /** Whether no two of some objects have the same name; a name that is absent or blank is none. */
    static void unique(Collection<? extends EObject> objects, EStructuralFeature feature, Problems problems) {
        Set<String> seen = new HashSet<>();
        for (EObject object : objects) {
            if (object.eGet(feature) instanceof String name && !name.isBlank() && !seen.add(name)) {
                problems.error(object, feature, "name.twice");
            }
        }
    }

    /** Whether a name is one of those known. */
    static void leads(
            EObject object,
            EStructuralFeature feature,
            @Nullable String name,
            Collection<String> known,
            String key,
            Problems problems) {
        if (name != null && !known.contains(name)) {
            problems.add(Severity.ERROR, object, feature, name, key, suggestion(name, known));
        }
    }

    static List<String> names(Collection<? extends EObject> objects, EStructuralFeature feature) {
        List<String> names = new ArrayList<>();
        for (EObject object : objects) {
            if (object.eGet(feature) instanceof String name && !name.isBlank()) {
                names.add(name);
            }
        }
        return names;
    }

    private static String suggestion(String name, Collection<String> known) {
        if (known.isEmpty()) {
            return Problems.text("known.none");
        }
        String nearest = NearestName.of(name, known);
        return nearest.isEmpty()
                ? Problems.text("known.all", String.join(", ", known))
                : Problems.text("known.near", nearest);
    }
}
