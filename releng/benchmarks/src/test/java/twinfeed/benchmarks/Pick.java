// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.util.Locale;
import java.util.Random;

/** Picks what a house is made of; the same seed picks the same. */
record Pick(Random random) {
    @SafeVarargs
    final <T> T of(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    /** Whether something of a probability in percent is so. */
    boolean is(int percent) {
        return random.nextInt(100) < percent;
    }

    /** A reading between two values, with its unit, as people write it. */
    String reading(double from, double to, String unit) {
        return String.format(Locale.ROOT, "%.2f %s", from + (to - from) * random.nextDouble(), unit);
    }
}
