// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How much more or less water there is than now, as people say it. */
final class FlowWords {
    /** Less than this share of difference nobody notices; as much as a reading of flow is worth. */
    private static final double SAME = 0.03;

    /** From this ratio on it is told in whole times. */
    private static final double TIMES = 1.875;

    /** From here on so much is gone that the share no longer matters. */
    private static final double FAR_LESS = 0.4;

    private static final int MOST_TIMES = 4;

    /** Shares that have a name. */
    private enum Share {
        LITTLE(0.05),
        TENTH(0.1),
        FIFTH(0.2),
        QUARTER(0.25),
        THIRD(1 / 3.0),
        HALF(0.5),
        TWO_THIRDS(2 / 3.0),
        THREE_QUARTERS(0.75);

        private final double value;

        Share(double value) {
            this.value = value;
        }

        private String key() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    private FlowWords() {}

    /**
     * The key of the words for a flow beside today's.
     *
     * @param then the flow offered, in any unit
     * @param now the flow of today in the same unit, absent if it is not known
     * @return empty where there is nothing to compare with
     */
    static Optional<String> key(double then, @Nullable Double now) {
        if (now == null || !(now > 0) || !(then >= 0)) {
            return Optional.empty();
        }
        double ratio = then / now;
        if (Math.abs(ratio - 1) < SAME) {
            return Optional.of("flow.same");
        }
        if (ratio >= TIMES) {
            return Optional.of("flow.times." + Math.min(MOST_TIMES, Math.round(ratio)));
        }
        if (ratio < FAR_LESS) {
            return Optional.of("flow.less.far");
        }
        double share = Math.abs(ratio - 1);
        return Arrays.stream(Share.values())
                .min(Comparator.comparingDouble(one -> Math.abs(one.value - share)))
                .map(one -> (ratio > 1 ? "flow.more." : "flow.less.") + one.key());
    }
}
