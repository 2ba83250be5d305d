// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import twinfeed.document.drawing.DrawnPiece;
import twinfeed.document.drawing.PieceKind;

/**
 * Heights above the start of the pipes, m. A pipe whose rise was not measured runs level, as it is calculated; a tap whose height was not
 * measured lies at its tee.
 *
 * @param nodes of the start and of the far end of each pipe
 * @param taps of the outlets
 * @param surveyed those that rest on a reading, the start included
 */
record Heights(double[] nodes, double[] taps, List<Double> surveyed) {
    static Heights of(List<DrawnPiece> pipes, List<DrawnPiece> taps) {
        double[] nodes = new double[pipes.size() + 1];
        TreeSet<Double> surveyed = new TreeSet<>();
        for (int i = 0; i < pipes.size(); i++) {
            Double rise = pipes.get(i).extent().riseM();
            nodes[i + 1] = nodes[i] + (rise == null ? 0 : rise);
            if (rise != null) {
                surveyed.add(nodes[i + 1]);
            }
        }
        double[] outlets = new double[taps.size()];
        for (int i = 0; i < outlets.length; i++) {
            Double above = taps.get(i).extent().riseM();
            outlets[i] = nodes[taps.get(i).extent().tee()] + (above == null ? 0 : above);
            if (above != null) {
                surveyed.add(outlets[i]);
            }
        }
        if (!surveyed.isEmpty()) {
            surveyed.add(0.0);
        }
        return new Heights(nodes, outlets, new ArrayList<>(surveyed));
    }

    static List<DrawnPiece> only(List<DrawnPiece> pieces, PieceKind kind) {
        return pieces.stream().filter(piece -> piece.kind() == kind).toList();
    }

    double lowest() {
        double lowest = 0;
        for (double node : nodes) {
            lowest = Math.min(lowest, node);
        }
        for (double tap : taps) {
            lowest = Math.min(lowest, tap);
        }
        return lowest;
    }

    double highest() {
        double highest = 0;
        for (double node : nodes) {
            highest = Math.max(highest, node);
        }
        for (double tap : taps) {
            highest = Math.max(highest, tap);
        }
        return highest;
    }

    double unit() {
        return nodes[nodes.length - 1];
    }
}
