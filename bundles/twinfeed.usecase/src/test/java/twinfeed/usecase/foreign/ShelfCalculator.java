// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.foreign;

import java.util.List;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Context;
import twinfeed.units.text.Texts;

/** A third party's calculator without a check, for jars that tests make. */
public final class ShelfCalculator implements Calculator {
    @Override
    public CalculatorDescriptor descriptor() {
        return new CalculatorDescriptor(
                "shelf",
                "1",
                new Texts(ShelfCalculator.class, "Shelf"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    @Override
    public Assessor prepare(Context context) {
        return (candidate, shared, findings) -> {};
    }
}
