// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.formula;

import java.util.List;
import twinfeed.calculator.formula.Formula;

/** The functions that this calculator publishes. */
public final class CircuitFormulas {
    public static final List<Formula> ALL = List.of(
            ElementFormulas.ELEMENT,
            ElementFormulas.ELEMENTS,
            DropFormulas.DROP,
            DropFormulas.DELIVERED,
            CapacityFormulas.CAPACITY,
            CapacityFormulas.NEEDED,
            LoopFormulas.LOOP,
            LoopFormulas.LIMIT,
            LoopFormulas.ELECTRODE,
            AdiabaticFormula.FORMULA,
            FuseFormula.FORMULA,
            MaximumFormulas.RUN,
            MaximumFormulas.POWER);

    private CircuitFormulas() {}
}
