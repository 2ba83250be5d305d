// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The first draws of a set of inputs. They depend on nothing but the kinds of the inputs, so that all heaters and works of a house, and
 * all houses of one street, share them; those of the sets used last are kept. Thread-safe.
 */
final class FirstDraws {
    /** So many sets are kept; 4,096 draws of 150 inputs, the most that are drawn this way, take 10 MB. */
    private static final int KEPT = 8;

    private static final Map<Key, FirstDraws> LAST_USED = new LinkedHashMap<>(2 * KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, FirstDraws> eldest) {
            return size() > KEPT;
        }
    };

    private record Key(DrawnInputs inputs, long seed) {}

    private final Key key;
    private double[][] positions = {};
    private double[][] columns = {};
    private int inColumns;

    private FirstDraws(Key key) {
        this.key = key;
    }

    /** Those of a set of inputs. */
    static FirstDraws of(DrawnInputs inputs, long seed) {
        Key key = new Key(inputs, seed);
        synchronized (LAST_USED) {
            return LAST_USED.computeIfAbsent(key, FirstDraws::new);
        }
    }

    /**
     * Where the first draws put the inputs.
     *
     * @param count how many draws; there may be more in the answer
     * @return for each draw the positions; must not be changed
     */
    synchronized double[][] first(int count) {
        if (positions.length < count) {
            int made = positions.length;
            double[][] more = Arrays.copyOf(positions, count);
            new Draws(key.inputs, key.seed).from(made, count - made, (draw, at) -> more[draw] = at);
            positions = more;
        }
        return positions;
    }

    /**
     * The same by input.
     *
     * @param count how many draws; there may be more in the answer
     * @return for each input where each draw puts it; must not be changed
     */
    synchronized double[][] columns(int count) {
        if (inColumns < count) {
            double[][] rows = first(count);
            double[][] turned = new double[rows[0].length][count];
            for (int draw = 0; draw < count; draw++) {
                for (int input = 0; input < turned.length; input++) {
                    turned[input][draw] = rows[draw][input];
                }
            }
            columns = turned;
            inColumns = count;
        }
        return columns;
    }
}
