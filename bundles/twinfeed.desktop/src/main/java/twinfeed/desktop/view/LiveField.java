// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.Iterator;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.model.survey.Survey;

/** Finds the field of a piece in the survey that is being edited, whichever copy of it was drawn. */
public final class LiveField {
    private LiveField() {}

    /** The field; empty if the piece is not in the survey, because only the work brings it. */
    public static Optional<FieldLocation> of(DrawnPiece piece, Survey survey) {
        EObject root = piece.place().root();
        String path = piece.place().path();
        if (EcoreUtil.isAncestor(survey, root)) {
            return Optional.of(new FieldLocation(root, path));
        }
        return root instanceof Survey
                ? Optional.of(new FieldLocation(survey, path))
                : Optional.ofNullable(named(root, survey)).map(found -> new FieldLocation(found, path));
    }

    private static @Nullable EObject named(EObject piece, Survey survey) {
        EStructuralFeature name = piece.eClass().getEStructuralFeature("name");
        Object called = name == null ? null : piece.eGet(name);
        Iterator<EObject> all = survey.eAllContents();
        while (called != null && all.hasNext()) {
            EObject each = all.next();
            if (each.eClass() == piece.eClass() && called.equals(each.eGet(name))) {
                return each;
            }
        }
        return null;
    }
}
