// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.Map;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.Survey;

/**
 * What a calculator is given to prepare for one survey.
 *
 * @param calculator id of the calculator
 * @param survey the survey; must not be changed
 * @param rules the rule set that the survey names, or the default one
 * @param grid the conditions to be judged
 * @param readings tells which readings are missing
 * @param parameters the calculator's own parameters
 * @param assumptions where defaults are recorded
 */
public record Context(
        String calculator,
        Survey survey,
        RuleSet rules,
        Grid grid,
        Readings readings,
        Arguments parameters,
        Assumptions assumptions) {
    /** Records a default that took part. */
    public void assume(String key, Map<String, Object> arguments) {
        assumptions.add(new Assumptions.Assumption(calculator, key, arguments, false));
    }

    /** Records a usual figure from a table that took part, which a customer is told of only by number. */
    public void assumeTabulated(String key, Map<String, Object> arguments) {
        assumptions.add(new Assumptions.Assumption(calculator, key, arguments, true));
    }
}
