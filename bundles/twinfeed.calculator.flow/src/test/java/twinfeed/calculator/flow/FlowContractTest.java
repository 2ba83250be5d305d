// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import twinfeed.calculator.CalculatorContract;

/** What every calculator has to keep, kept by this one. */
class FlowContractTest extends CalculatorContract {
    FlowContractTest() {
        super(new FlowCalculator(), Samples::survey, Samples::heater);
    }
}
