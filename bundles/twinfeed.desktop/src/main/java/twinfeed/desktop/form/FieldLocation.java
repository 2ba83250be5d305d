// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.session.ModelChange;
import twinfeed.model.survey.Survey;

/**
 * Where a reading is recorded: an object of the survey and the way from it to the reading.
 *
 * @param root an object of the survey
 * @param path path from there, for example {@code size}; empty for the object itself, which is a row of a list then
 */
public record FieldLocation(EObject root, String path) {
    /** Where the pages show what was changed: the row that is there again, or else the value or the list. */
    public static FieldLocation of(ModelChange change) {
        @Nullable EObject row = change.element();
        if (row != null) {
            return new FieldLocation(row, "");
        }
        String path = change.path().stream().map(EStructuralFeature::getName).collect(Collectors.joining("."));
        EObject root = change.owner();
        // A page asks for the readings of the survey or the job, a list for those of its rows; all else lies on the way
        // there.
        while (!(root instanceof Survey)
                && root.eContainer() != null
                && !root.eContainingFeature().isMany()) {
            path = root.eContainingFeature().getName() + "." + path;
            root = root.eContainer();
        }
        return new FieldLocation(root, path);
    }

    /** Whether this is a row of a list as a whole. */
    public boolean row() {
        return path.isEmpty();
    }
}
