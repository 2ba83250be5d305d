// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import org.osgi.service.component.annotations.Component;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Context;
import twinfeed.calculator.SharedQuantity;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.text.FaultTexts;
import twinfeed.units.text.Texts;

/**
 * What has failed in the unit that is there: the likeliest cause by what was reported and measured, the elements and the coil by
 * their resistances, and whether what was measured under the cover was measured safely.
 *
 * <p>Of the findings about the supplies it uses the margin at the switch only. The job sheet of the use case, which has all findings
 * with the tolerances of their readings, uses all of them.
 */
@Component(service = Calculator.class)
public final class FaultsCalculator implements Calculator {
    /** Id of this calculator. */
    public static final String ID = "faults";

    /** Messages of the findings, with the names of parts, questions and steps of the isolation. */
    public static final Texts TEXTS = new Texts(FaultsCalculator.class, "Faults").including(FaultTexts.NAMES);

    private static final CalculatorDescriptor DESCRIPTOR = CalculatorDescriptor.of(FaultsCalculator.class)
            .texts(TEXTS)
            .consumes(SharedQuantity.SWITCH_MARGIN)
            .checks(FaultsChecks.ALL)
            .build();

    @Override
    public CalculatorDescriptor descriptor() {
        return DESCRIPTOR;
    }

    @Override
    public Assessor prepare(Context context) {
        return new FaultsAssessor(context, FaultData.current());
    }
}
