// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import java.util.List;
import java.util.Set;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.rules.RuleSet;

/**
 * What the answers of one calculator follow from while readings are moved, besides where they are moved to. Two that are equal have equal answers.
 *
 * @param calculator id and version of the calculator
 * @param changed what it reads of the house that is judged
 * @param surveyed what it reads of the house in which the readings were taken, or that it is the same house
 * @param heater the data of the heater, and whether it is the one that is there
 * @param rules the rule set
 * @param asked keys of its checks that are asked for
 * @param quantities the quantities that it provides and others take
 */
public record CalculatorInputs(
        List<String> calculator,
        List<Object> changed,
        List<Object> surveyed,
        List<Object> heater,
        RuleSet rules,
        Set<String> asked,
        Set<SharedQuantity> quantities) {}
