// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.List;
import twinfeed.calculator.rules.DiversityShare;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.engineering.demand.Diversity;
import twinfeed.engineering.demand.DiversityLoad;
import twinfeed.engineering.demand.DiversityRule;

/** The diversity of a rule set, ready for the sum. */
final class DiversityRules {
    private final List<DiversityRule> rules;

    DiversityRules(RuleSet set) {
        this.rules = set.diversity().stream().map(DiversityRules::rule).toList();
    }

    private static DiversityRule rule(DiversityShare share) {
        return new DiversityRule(
                share.kind(),
                share.fullUpToA(),
                share.shareAbove(),
                share.together(),
                share.rankShares(),
                share.socketExtraA());
    }

    List<DiversityRule> list() {
        return rules;
    }

    /** What loads draw at once, A. */
    double demandA(List<DiversityLoad> loads) {
        return Diversity.of(loads, rules).totalA();
    }

    /** Whether the rule set has a line for every kind among the loads. */
    boolean knows(List<DiversityLoad> loads) {
        return loads.stream()
                .allMatch(load -> rules.stream().anyMatch(rule -> rule.kind().equals(load.kind())));
    }
}
