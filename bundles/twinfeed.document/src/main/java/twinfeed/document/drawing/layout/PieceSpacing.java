// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.List;
import java.util.Objects;
import twinfeed.document.drawing.DrawnPiece;

/** How pieces share the way from one side of the house to the other: half of it alike, half by their lengths. */
final class PieceSpacing {
    private static final double ALIKE = 0.55;

    private PieceSpacing() {}

    /**
     * The ends of pieces.
     *
     * @return one more than there are pieces: where the first begins, then where each ends
     */
    static double[] over(List<DrawnPiece> pieces, double from, double to) {
        double known = pieces.stream()
                .map(piece -> piece.extent().lengthM())
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(1);
        double usual = known > 0 ? known : 1;
        double sum = pieces.stream().mapToDouble(piece -> length(piece, usual)).sum();
        double[] ends = new double[pieces.size() + 1];
        ends[0] = from;
        for (int i = 0; i < pieces.size(); i++) {
            double share = ALIKE / pieces.size() + (1 - ALIKE) * (sum > 0 ? length(pieces.get(i), usual) / sum : 0);
            ends[i + 1] = ends[i] + (to - from) * share;
        }
        return ends;
    }

    /** What was not measured is drawn of usual length. */
    private static double length(DrawnPiece piece, double usual) {
        Double lengthM = piece.extent().lengthM();
        return lengthM == null ? usual : Math.max(0, lengthM);
    }
}
