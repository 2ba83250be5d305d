// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Context;
import twinfeed.calculator.SharedQuantity;
import twinfeed.model.assessment.Supply;

/**
 * Judges what a house draws at once with a heater in place of the present one, with the diversity of the rule set.
 *
 * <p>A load whose current is not known makes the answer "cannot tell": a sum that leaves something out would be too good.
 */
@Component(service = Calculator.class)
public final class DemandCalculator implements Calculator {
    private static final CalculatorDescriptor DESCRIPTOR = CalculatorDescriptor.of(DemandCalculator.class)
            .consumes(SharedQuantity.DESIGN_CURRENT)
            .reads("survey.electricity", "survey.unit.heater", "survey.unit.heaterId")
            .supply(Supply.ELECTRICITY)
            .checks(DemandChecks.ALL)
            .remedies(DemandRemedyKinds.ALL)
            .formulas(List.of(MaximumDemand.FORMULA))
            .build();

    @Override
    public CalculatorDescriptor descriptor() {
        return DESCRIPTOR;
    }

    @Override
    public Assessor prepare(Context context) {
        HouseDemand house = HouseDemand.of(context);
        DemandRemedies remedies = new DemandRemedies(house);
        List<CheckGroup> groups = List.of(
                new MaximumDemandChecks(house, remedies), new SecondShowerCheck(house), new SupplyChecks(house));
        return (candidate, shared, findings) -> {
            ShowerCase shower = new ShowerCase(candidate, shared);
            groups.stream()
                    .filter(group -> findings.asks(group.checks()))
                    .forEach(group -> group.check(shower, findings));
        };
    }
}
