// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.demand.DiversityLoad;
import twinfeed.engineering.demand.DiversityRule;

/** The sum of a house as a person writes it down: every load, what of each kind counts, and the total. */
final class DemandWorking {
    private DemandWorking() {}

    static Working of(
            List<DiversityLoad> loads,
            Map<DiversityLoad, CurrentSource> currents,
            List<DiversityRule> rules,
            String source) {
        Working.Builder working = Working.start();
        List<String> sums = new ArrayList<>();
        int number = 0;
        for (DiversityRule rule : rules) {
            List<DiversityLoad> ranked = ranked(loads, rule);
            List<String> symbols = new ArrayList<>();
            for (DiversityLoad load : ranked) {
                number++;
                symbols.add("I" + number);
                currents.getOrDefault(load, CurrentSource.UNKNOWN).addTo(working, number, load);
            }
            if (!symbols.isEmpty()) {
                String sum = "D" + (sums.size() + 1);
                working.step(sum, "demand." + rule.kind(), expression(rule, ranked, symbols), "A", source);
                sums.add(sum);
            }
        }
        return working.step("Id", "maximumDemand", String.join(" + ", sums), "A", source)
                .build();
    }

    private static List<DiversityLoad> ranked(List<DiversityLoad> loads, DiversityRule rule) {
        return loads.stream()
                .filter(load -> load.kind().equals(rule.kind()))
                .sorted(Comparator.comparingDouble(DiversityLoad::currentA).reversed())
                .toList();
    }

    private static String expression(DiversityRule rule, List<DiversityLoad> loads, List<String> symbols) {
        List<String> parts = new ArrayList<>();
        if (rule.onTotal()) {
            parts.add(counted(rule, "(" + String.join(" + ", symbols) + ")"));
        } else {
            for (int rank = 0; rank < symbols.size(); rank++) {
                double share =
                        rule.rankShares().get(Math.min(rank, rule.rankShares().size() - 1));
                String counted = counted(rule, symbols.get(rank));
                parts.add(share == 1 ? counted : share + " * (" + counted + ")");
            }
        }
        long sockets = loads.stream().filter(DiversityLoad::hasSocket).count();
        if (sockets > 0 && rule.socketExtraA() > 0) {
            parts.add(sockets + " * " + rule.socketExtraA());
        }
        return String.join(" + ", parts);
    }

    private static String counted(DiversityRule rule, String current) {
        if (rule.shareAbove() == 1) {
            return current;
        }
        if (rule.fullUpToA() == 0) {
            return rule.shareAbove() + " * " + current;
        }
        return "min(" + current + ", " + rule.fullUpToA() + ") + " + rule.shareAbove() + " * max(0, " + current + " - "
                + rule.fullUpToA() + ")";
    }
}
