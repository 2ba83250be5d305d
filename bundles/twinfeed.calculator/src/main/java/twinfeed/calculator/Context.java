// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.Map;
import java.util.function.Supplier;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.Survey;

/**
 * What a calculator is given to prepare for one survey.
 *
 * @param calculator id of the calculator
 * @param survey the survey; must not be changed
 * @param surveyed the house in which the readings were taken: the survey itself or, where works have changed a copy of it, the
 *     survey before them. What is fitted from readings is fitted there and carried over, for works change only what they change
 * @param rules the rule set that the survey names, or the default one
 * @param grid the conditions to be judged
 * @param readings tells which readings are missing
 * @param parameters the calculator's own parameters
 * @param assumptions where defaults are recorded
 */
public record Context(
        String calculator,
        Survey survey,
        Survey surveyed,
        RuleSet rules,
        Grid grid,
        Readings readings,
        Arguments parameters,
        Assumptions assumptions) {
    /** Records a default that took part. */
    public void assume(String key, Map<String, Object> arguments) {
        assumptions.add(calculator, key, arguments, false);
    }

    /**
     * Records a usual figure from a table that took part, which a customer is told of only by number.
     *
     * @param arguments values that its text names, asked for only where assumptions are wanted: a house has dozens of such figures
     */
    public void assumeTabulated(String key, Supplier<Map<String, Object>> arguments) {
        if (assumptions.wanted()) {
            assumptions.add(calculator, key, arguments.get(), true);
        }
    }
}
