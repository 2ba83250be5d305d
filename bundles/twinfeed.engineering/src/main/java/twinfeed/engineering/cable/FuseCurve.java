// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.cable;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Solution;

/**
 * The time/current characteristic of a fuse, through points of it; between two of them time is a power of the current, which is a
 * straight line on the usual double-logarithmic paper.
 */
public final class FuseCurve {
    private static final int HALVINGS = 60;

    private final NavigableMap<Double, Double> currents = new TreeMap<>();

    /**
     * A curve through points.
     *
     * @param currentsByTime currents, A, by the time, s, within which each blows the fuse; at least two, positive, the current smaller
     *     for the longer time
     */
    public FuseCurve(Map<Double, Double> currentsByTime) {
        currentsByTime.forEach((timeS, currentA) ->
                currents.put(Require.positive(timeS, "timeS"), Require.positive(currentA, "currentA")));
        double before = Double.MAX_VALUE;
        for (double currentA : currents.values()) {
            Require.within(currentA, 0, Math.nextDown(before), "currentA");
            before = currentA;
        }
        Require.within(currents.size(), 2, Integer.MAX_VALUE, "currentsByTime");
    }

    /** The shortest time of the curve, s. */
    public double shortestS() {
        return currents.firstKey();
    }

    /** The longest time of the curve, s. */
    public double longestS() {
        return currents.lastKey();
    }

    /**
     * Returns the current, A, that blows the fuse within a time.
     *
     * @param timeS time, s, within the curve
     */
    public double currentA(double timeS) {
        Require.within(timeS, shortestS(), longestS(), "timeS");
        Map.Entry<Double, Double> below = Objects.requireNonNull(currents.floorEntry(timeS));
        Map.Entry<Double, Double> above = Objects.requireNonNull(currents.ceilingEntry(timeS));
        if (below.getKey().equals(above.getKey())) {
            return below.getValue();
        }
        double share = Math.log(timeS / below.getKey()) / Math.log(above.getKey() / below.getKey());
        return below.getValue() * Math.pow(above.getValue() / below.getValue(), share);
    }

    /**
     * Returns the longest time, s, for which a fault lasts: the curve's, and its shortest for every larger current.
     *
     * @param currentA fault current, A, positive
     * @return the time, or {@link FailureReason#FUSE_TOO_SLOW} below the smallest current of the curve
     */
    public Solution timeS(double currentA) {
        Require.positive(currentA, "currentA");
        if (currentA >= currentA(shortestS())) {
            return Solution.of(shortestS());
        }
        if (currentA < currentA(longestS())) {
            return Solution.none(FailureReason.FUSE_TOO_SLOW);
        }
        double lowS = shortestS();
        double highS = longestS();
        for (int round = 0; round < HALVINGS; round++) {
            double middleS = Math.sqrt(lowS * highS);
            if (currentA(middleS) > currentA) {
                lowS = middleS;
            } else {
                highS = middleS;
            }
        }
        return Solution.of(highS);
    }

    /**
     * Returns the largest energy I^2 t, A2s, that the fuse lets pass. Beyond the curve it melts with the energy of its shortest point
     * and then arcs; the shortest time with the whole current bounds that too, and the smaller of the two is taken.
     *
     * @param currentA fault current, A, positive
     * @param arcingS longest time of arcing, s, zero or more
     * @return the energy, or {@link FailureReason#FUSE_TOO_SLOW} below the smallest current of the curve
     */
    public Solution energyA2s(double currentA, double arcingS) {
        Require.notNegative(arcingS, "arcingS");
        double meltsA = currentA(shortestS());
        double squared = currentA * currentA;
        return timeS(currentA)
                .map(timeS -> currentA <= meltsA
                        ? squared * timeS
                        : Math.min(squared * timeS, meltsA * meltsA * timeS + squared * arcingS));
    }

    /**
     * Returns the longest time of the curve, s, for which a conductor stands the current that blows the fuse in that time.
     *
     * @param withstandA2s k^2 S^2 of the conductor, A2s, positive
     * @return the time, or {@link FailureReason#CONDUCTOR_TOO_THIN} where even the shortest is too long
     */
    public Solution longestWithstoodS(double withstandA2s) {
        Require.positive(withstandA2s, "withstandA2s");
        if (energyAtS(shortestS()) > withstandA2s) {
            return Solution.none(FailureReason.CONDUCTOR_TOO_THIN);
        }
        if (energyAtS(longestS()) <= withstandA2s) {
            return Solution.of(longestS());
        }
        double lowS = shortestS();
        double highS = longestS();
        for (int round = 0; round < HALVINGS; round++) {
            double middleS = Math.sqrt(lowS * highS);
            if (energyAtS(middleS) <= withstandA2s) {
                lowS = middleS;
            } else {
                highS = middleS;
            }
        }
        return Solution.of(lowS);
    }

    private double energyAtS(double timeS) {
        double currentA = currentA(timeS);
        return currentA * currentA * timeS;
    }
}
