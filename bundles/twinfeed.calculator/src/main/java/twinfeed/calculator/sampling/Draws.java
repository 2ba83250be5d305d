// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Random;
import org.hipparchus.random.SobolSequenceGenerator;

/** The draws of a set of inputs: a Sobol sequence with a seeded shift modulo 1, so that the same survey gives the same ones. */
final class Draws {
    private final DrawnInputs inputs;
    private final double[] shift;
    private final SobolSequenceGenerator sobol;

    /** What is done with a draw. */
    @FunctionalInterface
    interface Use {
        /**
         * Uses it.
         *
         * @param draw its number
         * @param positions where it puts the inputs
         */
        void of(int draw, double[] positions);
    }

    Draws(DrawnInputs inputs, long seed) {
        this.inputs = inputs;
        this.shift = new double[inputs.dimensions()];
        this.sobol = new SobolSequenceGenerator(shift.length);
        Random random = new Random(seed);
        for (int i = 0; i < shift.length; i++) {
            shift[i] = random.nextDouble();
        }
    }

    /** Goes through some draws in their order. */
    void from(int first, int count, Use use) {
        double[] point = sobol.skipTo(first);
        for (int draw = first; draw < first + count; draw++) {
            if (draw > first) {
                point = sobol.nextVector();
            }
            use.of(draw, inputs.positions(shifted(point)));
        }
    }

    private double[] shifted(double[] point) {
        double[] moved = new double[point.length];
        for (int i = 0; i < point.length; i++) {
            double sum = point[i] + shift[i];
            moved[i] = sum >= 1 ? sum - 1 : sum;
        }
        return moved;
    }
}
