// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.demand;

import java.util.List;
import twinfeed.engineering.numeric.Require;

/**
 * How much of the loads of one kind counts at once. The figures are those of whichever guide is used; none stands here.
 *
 * <p>Each load (or, with {@code onTotal}, all of the kind together) counts in full up to a current and by a share above
 * it; then the loads, largest first, count by the shares of their rank, the last of which holds for all that follow.
 *
 * @param kind the kind of load, as the loads name it
 * @param fullUpToA current that counts in full, A, zero or more
 * @param shareAbove share of what is above it, 0..1
 * @param onTotal whether that is applied to all loads of the kind together (then ranks do not matter)
 * @param rankShares shares of the largest load, the second largest and so on, 0..1, at least one
 * @param socketExtraA what a socket outlet in the load's control unit adds, A, zero or more
 */
public record DiversityRule(
        String kind,
        double fullUpToA,
        double shareAbove,
        boolean onTotal,
        List<Double> rankShares,
        double socketExtraA) {
    /** Checks the ranges and copies the list. */
    public DiversityRule {
        rankShares = List.copyOf(rankShares);
        Require.notNegative(fullUpToA, "fullUpToA");
        Require.within(shareAbove, 0, 1, "shareAbove");
        Require.positive(rankShares.size(), "rankShares.size");
        rankShares.forEach(share -> Require.within(share, 0, 1, "rankShares"));
        Require.notNegative(socketExtraA, "socketExtraA");
    }

    /** Returns the rule under which each load of a kind counts by the shares of its rank. */
    public static DiversityRule byRank(String kind, List<Double> rankShares) {
        return new DiversityRule(kind, 0, 1, false, rankShares, 0);
    }

    /** Returns the rule under which the total of a kind counts in full up to a current and by a share above it. */
    public static DiversityRule onTotal(String kind, double fullUpToA, double shareAbove) {
        return new DiversityRule(kind, fullUpToA, shareAbove, true, List.of(1.0), 0);
    }

    double afterThreshold(double currentA) {
        return Math.min(currentA, fullUpToA) + shareAbove * Math.max(0, currentA - fullUpToA);
    }

    double rankShare(int rank) {
        return rankShares.get(Math.min(rank, rankShares.size() - 1));
    }
}
