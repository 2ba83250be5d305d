// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import java.util.List;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorContract;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;

/** What every calculator has to keep, kept by this one. */
class FlowContractTest extends CalculatorContract {
    @Override
    protected List<Calculator> calculators() {
        return List.of(new FlowCalculator());
    }

    @Override
    protected Survey survey() {
        return Samples.survey();
    }

    @Override
    protected Heater heater() {
        return Samples.heater();
    }
}
