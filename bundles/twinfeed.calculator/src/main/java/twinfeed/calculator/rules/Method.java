// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.List;

/**
 * A reference method of installation.
 *
 * @param key its name in the standard
 * @param title what it means
 * @param insulated whether its tabulated capacity already contains thermal insulation
 * @param move how a fitter can better a segment that lies so
 * @param plausible methods that a concealed run of this kind may really have
 */
public record Method(String key, String title, boolean insulated, Move move, List<String> plausible) {
    public Method {
        plausible = List.copyOf(plausible);
    }

    /** How a segment can be bettered without a new cable. */
    public enum Move {
        /** Lifted out of the insulation and clipped. */
        LIFT,
        /** Clipped apart from other cables and from insulation. */
        CLIP,
        /** Not at all: it is inside a wall. */
        NO
    }
}
