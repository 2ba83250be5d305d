// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.demand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Maximum demand of a household from its loads and the rules of a guide. */
public final class Diversity {
    private Diversity() {}

    /**
     * Returns the demand of the loads under the rules.
     *
     * @param loads the loads, in any order; equal ones rank in the order given
     * @param rules one rule for each kind that occurs
     * @throws IllegalArgumentException if a load has no rule, or a kind has two: nothing may drop out of the sum
     */
    public static Demand of(List<DiversityLoad> loads, List<DiversityRule> rules) {
        checkKinds(loads, rules);
        List<Demand.Step> steps = new ArrayList<>();
        for (DiversityRule rule : rules) {
            List<DiversityLoad> ofKind = loads.stream()
                    .filter(load -> load.kind().equals(rule.kind()))
                    .sorted(Comparator.comparingDouble(DiversityLoad::currentA).reversed())
                    .toList();
            if (!ofKind.isEmpty()) {
                steps.addAll(rule.onTotal() ? List.of(together(ofKind, rule)) : oneByOne(ofKind, rule));
            }
        }
        return new Demand(steps);
    }

    private static void checkKinds(List<DiversityLoad> loads, List<DiversityRule> rules) {
        Set<String> kinds = new HashSet<>();
        for (DiversityRule rule : rules) {
            if (!kinds.add(rule.kind())) {
                throw new IllegalArgumentException("two diversity rules for kind " + rule.kind());
            }
        }
        for (DiversityLoad load : loads) {
            if (!kinds.contains(load.kind())) {
                throw new IllegalArgumentException("load " + load.id() + ": no diversity rule for kind " + load.kind());
            }
        }
    }

    private static Demand.Step together(List<DiversityLoad> loads, DiversityRule rule) {
        double connected = loads.stream().mapToDouble(DiversityLoad::currentA).sum();
        double sockets = loads.stream().filter(DiversityLoad::hasSocket).count() * rule.socketExtraA();
        return new Demand.Step(
                rule.kind(),
                loads.stream().map(DiversityLoad::id).toList(),
                connected,
                rule.afterThreshold(connected) + sockets);
    }

    private static List<Demand.Step> oneByOne(List<DiversityLoad> loads, DiversityRule rule) {
        List<Demand.Step> steps = new ArrayList<>();
        for (int rank = 0; rank < loads.size(); rank++) {
            DiversityLoad load = loads.get(rank);
            double demand = rule.rankShare(rank) * rule.afterThreshold(load.currentA())
                    + (load.hasSocket() ? rule.socketExtraA() : 0);
            steps.add(new Demand.Step(rule.kind(), List.of(load.id()), load.currentA(), demand));
        }
        return steps;
    }
}
