// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.shape.Shape;

/**
 * The drawing of a house, laid out.
 *
 * @param width its width
 * @param height its height
 * @param shapes what is drawn, in this order
 * @param targets where the pieces are seen
 * @param names number or letter of each piece; the unit has none
 */
public record HousePicture(
        double width, double height, List<Shape> shapes, List<Target> targets, Map<DrawnPiece, String> names) {
    public HousePicture {
        shapes = List.copyOf(shapes);
        targets = List.copyOf(targets);
        names = Collections.unmodifiableMap(new IdentityHashMap<>(names));
    }

    /**
     * Where a piece is seen.
     *
     * @param area the place
     * @param piece the piece
     */
    public record Target(Area area, DrawnPiece piece) {}

    /** The piece at a point, if there is one. */
    public Optional<DrawnPiece> at(double x, double y) {
        return targets.stream()
                .filter(target -> target.area().contains(x, y))
                .map(Target::piece)
                .findFirst();
    }
}
