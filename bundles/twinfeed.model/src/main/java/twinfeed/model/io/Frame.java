// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;

/** An element that is open: an object, the text of one value of a list, or something unknown whose content is skipped. */
final class Frame {
    final String path;
    final @Nullable EClass type;
    final @Nullable EAttribute value;
    final StringBuilder text = new StringBuilder();
    private final Map<EStructuralFeature, Integer> seen = new HashMap<>();

    private Frame(String path, @Nullable EClass type, @Nullable EAttribute value) {
        this.path = path;
        this.type = type;
        this.value = value;
    }

    static Frame ofObject(String path, EClass type) {
        return new Frame(path, type, null);
    }

    static Frame ofValue(String path, EAttribute value) {
        return new Frame(path, null, value);
    }

    static Frame skipped(String path) {
        return new Frame(path, null, null);
    }

    boolean isSkipped() {
        return type == null && value == null;
    }

    /** Counts an element of a feature; 1 for the first. */
    int count(EStructuralFeature feature) {
        return seen.merge(feature, 1, Integer::sum);
    }

    String child(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
