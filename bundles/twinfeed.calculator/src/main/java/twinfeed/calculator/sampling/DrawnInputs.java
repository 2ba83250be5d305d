// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.List;

/**
 * What the draws of a set of inputs depend on, whatever house and heater they belong to.
 *
 * @param spreads the positions that each input can take
 * @param instruments for each input the index of the instrument whose bias it shares with others, -1 for none
 * @param count how many instruments there are
 */
record DrawnInputs(List<Spread> spreads, List<Integer> instruments, int count) {
    DrawnInputs {
        spreads = List.copyOf(spreads);
        instruments = List.copyOf(instruments);
    }

    /** How many coordinates a draw needs: one for each input, then one for each instrument. */
    int dimensions() {
        return spreads.size() + count;
    }

    /**
     * Where a draw puts the inputs.
     *
     * @param point its coordinates, 0 to 1
     * @return a position for each input
     */
    double[] positions(double[] point) {
        double[] positions = new double[spreads.size()];
        for (int i = 0; i < positions.length; i++) {
            int instrument = instruments.get(i);
            positions[i] = instrument < 0
                    ? spreads.get(i).position(point[i])
                    : spreads.get(i).position(point[i], point[positions.length + instrument]);
        }
        return positions;
    }
}
