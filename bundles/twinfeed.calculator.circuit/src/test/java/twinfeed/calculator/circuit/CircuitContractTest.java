// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.List;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorContract;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;

class CircuitContractTest extends CalculatorContract {
    @Override
    protected List<Calculator> calculators() {
        return List.of(new CircuitCalculator());
    }

    @Override
    protected Survey survey() {
        return Surveys.suitable();
    }

    @Override
    protected Heater heater() {
        return Surveys.heater("9.5 kW", "240 V");
    }
}
