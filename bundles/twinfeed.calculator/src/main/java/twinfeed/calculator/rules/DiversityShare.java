// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.List;

/**
 * How much of the loads of one kind counts at once.
 *
 * @param kind the kind of load
 * @param fullUpToA current that counts in full, A
 * @param shareAbove share of what is above it
 * @param together whether that is applied to all loads of the kind together
 * @param rankShares shares of the largest load, the second largest and so on; the last for all that follow
 * @param socketExtraA what a socket outlet in the load's control unit adds, A
 */
public record DiversityShare(
        String kind,
        double fullUpToA,
        double shareAbove,
        boolean together,
        List<Double> rankShares,
        double socketExtraA) {
    public DiversityShare {
        rankShares = List.copyOf(rankShares);
    }

    static List<DiversityShare> all(Table table) {
        return table.typed().stream().map(DiversityShare::of).toList();
    }

    private static DiversityShare of(TableRow row) {
        return new DiversityShare(
                row.word("kind"),
                row.number("full"),
                row.number("above"),
                row.yes("together"),
                row.numbers("ranks"),
                row.number("socket"));
    }
}
