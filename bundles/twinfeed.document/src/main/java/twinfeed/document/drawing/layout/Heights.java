// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
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
        return all().min().orElse(0);
    }

    double highest() {
        return all().max().orElse(0);
    }

    /** All of them; the start, at 0, is always there. */
    private DoubleStream all() {
        return DoubleStream.concat(DoubleStream.of(nodes), DoubleStream.of(taps));
    }

    double unit() {
        return nodes[nodes.length - 1];
    }
}
