// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.math.BigDecimal;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.model.survey.ParameterValue;

/**
 * A figure that nobody reads in the house and that is uncertain all the same: a calculator has a parameter for it, which a private copy
 * of a survey sets.
 *
 * @param value the parameter in the copy
 * @param path its path
 * @param nominal its usual value
 * @param halfWidth half-width of its rectangular distribution
 */
record SampledParameter(ParameterValue value, String path, double nominal, double halfWidth) implements SampledInput {
    @Override
    public int gauge() {
        return -1;
    }

    @Override
    public void place(double position) {
        value.setValue(BigDecimal.valueOf(nominal + halfWidth * position).toPlainString());
    }

    @Override
    public boolean isReadBy(CalculatorDescriptor calculator) {
        return calculator.id().equals(value.getCalculator());
    }

    @Override
    public Spread spread() {
        return Spread.RECTANGULAR;
    }
}
