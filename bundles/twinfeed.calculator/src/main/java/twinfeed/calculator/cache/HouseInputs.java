// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.Survey;

/** The values of a house, of which each calculator reads some. */
public final class HouseInputs {
    private static final List<Object> SAME_HOUSE = List.of("the same house");

    private final SurveyValues changed;
    private final @Nullable SurveyValues surveyed;
    private final RuleSet rules;
    private @Nullable Candidate candidate;
    private List<Object> heater = List.of();

    /**
     * The values of a house as they are now.
     *
     * @param surveyed the house in which the readings were taken
     * @param changed the house with works done; may be the same
     */
    public HouseInputs(Survey surveyed, Survey changed, RuleSet rules) {
        this.changed = SurveyValues.of(changed);
        this.surveyed = surveyed == changed ? null : SurveyValues.of(surveyed);
        this.rules = rules;
    }

    /**
     * What the answers of a calculator about a heater follow from.
     *
     * @param asked keys of the checks that are asked for, of any calculator
     * @param quantities the quantities that any calculator takes
     */
    public CalculatorInputs of(
            CalculatorDescriptor calculator, Candidate candidate, Set<String> asked, Set<SharedQuantity> quantities) {
        return new CalculatorInputs(
                List.of(calculator.id(), calculator.version()),
                changed.readBy(calculator),
                surveyed == null ? SAME_HOUSE : surveyed.readBy(calculator),
                heater(candidate),
                rules,
                calculator.checks().stream()
                        .map(Check::key)
                        .filter(asked::contains)
                        .collect(Collectors.toUnmodifiableSet()),
                calculator.provides().stream().filter(quantities::contains).collect(Collectors.toUnmodifiableSet()));
    }

    private List<Object> heater(Candidate asked) {
        if (asked != candidate) {
            candidate = asked;
            heater = List.of(asked.present(), SurveyValues.all(asked.heater()));
        }
        return heater;
    }
}
