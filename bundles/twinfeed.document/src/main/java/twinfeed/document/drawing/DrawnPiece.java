// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import org.eclipse.emf.ecore.EObject;
import org.jspecify.annotations.Nullable;

/**
 * One piece of a feed, with the finding that bears hardest on it.
 *
 * @param name what it is
 * @param detail its readings, as text
 * @param root an object of the survey, from which the path below leads to its reading
 * @param path the path, for example {@code size}
 * @param mark answer of the finding; null if no finding is about this piece
 * @param check title of the finding's check; empty without one
 * @param margin margin of the finding; empty without one
 * @param binding whether this finding decides
 */
public record DrawnPiece(
        String name,
        String detail,
        EObject root,
        String path,
        @Nullable Mark mark,
        String check,
        String margin,
        boolean binding) {
    /** All of it as a sentence, for those who hear the drawing, and for its tooltip. */
    public String sentence() {
        String finding = mark == null ? "" : ": " + mark.word() + ", " + check + (margin.isEmpty() ? "" : " " + margin);
        return name + (detail.isEmpty() ? "" : " (" + detail + ")") + finding;
    }
}
