// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import org.eclipse.emf.ecore.EObject;
import org.jspecify.annotations.Nullable;

/**
 * One piece of a supply, with the finding that bears hardest on it.
 *
 * @param kind what it is
 * @param name what it is called
 * @param detail its readings, as text
 * @param reading pressure or voltage at its far end, as text; empty if it is not known
 * @param extent where it runs
 * @param place where it is recorded
 * @param answer what was found; absent if no finding is about this piece
 * @param renewed whether the work renews or alters it, in words where it does; empty where it stays as it is
 */
public record DrawnPiece(
        PieceKind kind,
        String name,
        String detail,
        String reading,
        PieceExtent extent,
        Field place,
        @Nullable PieceAnswer answer,
        String renewed) {
    /**
     * The field of a reading.
     *
     * @param root an object of the survey
     * @param path path from there, for example {@code size}
     */
    public record Field(EObject root, String path) {}

    /** What it is called, and whether the work renews or alters it. */
    public String title() {
        return renewed.isEmpty() ? name : name + " (" + renewed + ")";
    }

    /** Answer of the finding; absent if no finding is about this piece. */
    public @Nullable Mark mark() {
        return answer == null ? null : answer.mark();
    }

    /** Margin of the finding; empty without one. */
    public String margin() {
        return answer == null ? "" : answer.margin();
    }

    /** Whether this piece decides. */
    public boolean binding() {
        return answer != null && answer.binding();
    }

    /** Sign and margin of the finding; empty without one. */
    public String verdict() {
        return answer == null ? "" : (answer.mark().sign() + " " + answer.margin()).strip();
    }

    /** All of it as a sentence, for screen readers, and for its tooltip. */
    public String sentence() {
        StringBuilder said = new StringBuilder(name);
        if (!renewed.isEmpty()) {
            said.append(", ").append(renewed);
        }
        if (!detail.isEmpty()) {
            said.append(" (").append(detail).append(')');
        }
        if (!reading.isEmpty()) {
            said.append(", ").append(reading);
        }
        if (answer != null) {
            said.append(": ").append(answer.mark().word()).append(", ").append(answer.check());
            said.append(answer.margin().isEmpty() ? "" : " " + answer.margin());
        }
        return said.toString();
    }
}
