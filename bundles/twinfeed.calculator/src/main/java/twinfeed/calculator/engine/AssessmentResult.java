// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.List;
import twinfeed.calculator.Assumptions;
import twinfeed.calculator.Grid;
import twinfeed.calculator.rules.RuleSet;

/**
 * All heaters judged against one house.
 *
 * @param rules the rule set used
 * @param grid the conditions
 * @param options results in the order of the candidates
 * @param assumptions defaults that took part
 */
public record AssessmentResult(
        RuleSet rules, Grid grid, List<OptionResult> options, List<Assumptions.Assumption> assumptions) {
    public AssessmentResult {
        options = List.copyOf(options);
        assumptions = List.copyOf(assumptions);
    }
}
