// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

/** What one input, alone, adds to the margin of one check: a parabola through three positions, or a figure for each possibility. */
sealed interface Effect {
    /** The addition to the margin at a position of the input. */
    double at(double position);

    /**
     * Adds the addition in each of several draws to a sum.
     *
     * @param sums the sum in each draw
     * @param positions where each draw puts the input; there may be more of them
     */
    default void addTo(double[] sums, double[] positions) {
        for (int draw = 0; draw < sums.length; draw++) {
            sums[draw] += at(positions[draw]);
        }
    }

    /** The least addition within the reach of the input; 0 or less. */
    double least();

    /** The largest addition within the reach of the input; 0 or more. */
    double largest();

    /**
     * A reading's effect.
     *
     * @param spread its positions
     * @param below the addition where the reading is its probe below
     * @param above the addition where it is its probe above
     */
    static Effect ofReading(Spread spread, double below, double above) {
        double probe = spread.probe();
        return new Parabola((above - below) / (2 * probe), (above + below) / (2 * probe * probe), spread.reach());
    }

    /**
     * The effect of one of several possibilities.
     *
     * @param additions the addition of each; 0 for the first, which the survey states
     */
    static Effect ofPossibilities(double[] additions) {
        return new Possibilities(additions.clone());
    }

    /** {@code slope * p + bend * p * p}. */
    record Parabola(double slope, double bend, double reach) implements Effect {
        @Override
        public double at(double position) {
            return position * (slope + bend * position);
        }

        @Override
        public void addTo(double[] sums, double[] positions) {
            // Without a call in it the loop runs over several draws at once.
            for (int draw = 0; draw < sums.length; draw++) {
                double position = positions[draw];
                sums[draw] += position * (slope + bend * position);
            }
        }

        @Override
        public double least() {
            return Math.min(Math.min(at(reach), at(-reach)), Math.min(0, turn()));
        }

        @Override
        public double largest() {
            return Math.max(Math.max(at(reach), at(-reach)), Math.max(0, turn()));
        }

        /** The addition where it neither rises nor falls, if that lies within reach. */
        private double turn() {
            double position = bend == 0 ? 0 : -slope / (2 * bend);
            return Math.abs(position) <= reach ? at(position) : 0;
        }
    }

    /** A figure for each possibility. */
    final class Possibilities implements Effect {
        private final double[] additions;

        private Possibilities(double[] additions) {
            this.additions = additions;
        }

        @Override
        public double at(double position) {
            return additions[(int) position];
        }

        @Override
        public double least() {
            return java.util.Arrays.stream(additions).min().orElse(0);
        }

        @Override
        public double largest() {
            return java.util.Arrays.stream(additions).max().orElse(0);
        }
    }
}
