// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import java.util.List;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorContract;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;

/** What every calculator has to keep, kept by this one. */
class FaultsContractTest extends CalculatorContract {
    @Override
    protected List<Calculator> calculators() {
        return List.of(new FaultsCalculator());
    }

    @Override
    protected Survey survey() {
        return SampleVisits.full();
    }

    @Override
    protected Heater heater() {
        return SampleVisits.heater();
    }
}
