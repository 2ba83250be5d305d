// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The names that a class may have in a file: attributes for single values, elements for all else. */
final class KnownNames {
    private KnownNames() {}

    static List<String> attributes(EClass type) {
        return names(type, false);
    }

    static List<String> elements(EClass type) {
        return names(type, true);
    }

    private static List<String> names(EClass type, boolean elements) {
        List<String> names = new ArrayList<>();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (elements == (feature instanceof EReference || feature.isMany())) {
                names.add(feature.getName());
            }
        }
        return names;
    }
}
