// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.List;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorContract;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;

class DemandContractTest extends CalculatorContract {
    @Override
    protected List<Calculator> calculators() {
        return List.of(new DemandCalculator());
    }

    @Override
    protected Survey survey() {
        return Houses.house("100 A", "100 A");
    }

    @Override
    protected Heater heater() {
        return Houses.heater();
    }
}
