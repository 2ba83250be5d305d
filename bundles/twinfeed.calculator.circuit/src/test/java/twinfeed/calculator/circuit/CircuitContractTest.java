// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import twinfeed.calculator.CalculatorContract;

/** What every calculator has to keep, kept by this one. */
class CircuitContractTest extends CalculatorContract {
    CircuitContractTest() {
        super(new CircuitCalculator(), Surveys::suitable, () -> Surveys.heater("9.5 kW", "240 V"));
    }
}
