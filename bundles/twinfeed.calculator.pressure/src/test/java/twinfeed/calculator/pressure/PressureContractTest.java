// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import twinfeed.calculator.CalculatorContract;

/** What every calculator has to keep, kept by this one. */
class PressureContractTest extends CalculatorContract {
    PressureContractTest() {
        super(new PressureCalculator(), Samples::survey, Samples::heater);
    }
}
