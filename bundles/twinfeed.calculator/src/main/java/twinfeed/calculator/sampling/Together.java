// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.List;
import java.util.stream.IntStream;

/**
 * All ways in which the inputs with several possibilities can stand together. Moved alone they may show nothing: where the worst of two pieces of cable counts,
 * a better method of one leaves the other the worst, and only both together change the answer.
 *
 * @param inputs the numbers of those inputs
 * @param possibilities how many possibilities each has
 */
record Together(int[] inputs, int[] possibilities) {
    /** So many ways at most are all tried; of more, so many are. */
    private static final int MOST = 64;

    /** Steps through more ways than are tried; prime, so that all possibilities of all inputs take their turns. */
    private static final long STEP = 7919;

    static Together of(List<SampledInput> all) {
        int[] inputs = IntStream.range(0, all.size())
                .filter(i -> all.get(i).spread().possibilities() > 0)
                .toArray();
        return new Together(
                inputs,
                IntStream.of(inputs)
                        .map(i -> all.get(i).spread().possibilities())
                        .toArray());
    }

    /** How many ways there are. */
    private long ways() {
        return IntStream.of(possibilities).asLongStream().reduce(1, (one, other) -> Math.min(one * other, 1L << 40));
    }

    /** How many ways there are, where all are tried. */
    int count() {
        return (int) ways();
    }

    /** Whether all ways are tried. */
    boolean whole() {
        return ways() <= MOST;
    }

    /** The ways to be tried in which two or more inputs stand elsewhere than stated. */
    List<Long> tried() {
        long ways = ways();
        return IntStream.range(0, (int) Math.min(ways, MOST))
                .mapToObj(i -> whole() ? i : (i + 1) * STEP % ways)
                .filter(way -> moved(way) > 1)
                .toList();
    }

    private int moved(long way) {
        int moved = 0;
        for (int possibility : possibilities) {
            moved += way % possibility == 0 ? 0 : 1;
            way /= possibility;
        }
        return moved;
    }

    /** Puts the inputs as a way has them. */
    void place(long way, double[] positions) {
        for (int i = 0; i < inputs.length; i++) {
            positions[inputs[i]] = way % possibilities[i];
            way /= possibilities[i];
        }
    }

    /** The number of the way in which a draw puts the inputs; the columns say for each input where each draw puts it. */
    int way(double[][] columns, int draw) {
        int way = 0;
        for (int i = inputs.length - 1; i >= 0; i--) {
            way = way * possibilities[i] + (int) columns[inputs[i]][draw];
        }
        return way;
    }
}
