// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import twinfeed.calculator.CalculatorContract;

/** What every calculator has to keep, kept by this one. */
class DemandContractTest extends CalculatorContract {
    DemandContractTest() {
        super(new DemandCalculator(), () -> Houses.house("100 A", "100 A"), Houses::heater);
    }
}
