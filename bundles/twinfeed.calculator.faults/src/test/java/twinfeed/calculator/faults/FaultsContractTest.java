// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import twinfeed.calculator.CalculatorContract;
import twinfeed.diagnosis.SampleVisits;

/** What every calculator has to keep, kept by this one. */
class FaultsContractTest extends CalculatorContract {
    FaultsContractTest() {
        super(new FaultsCalculator(), SampleVisits::full, SampleVisits::heater);
    }
}
