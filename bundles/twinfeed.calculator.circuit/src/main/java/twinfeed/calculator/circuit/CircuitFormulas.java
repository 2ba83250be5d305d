// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.List;
import twinfeed.calculator.Formula;

/** The functions that this calculator publishes. */
final class CircuitFormulas {
    static final List<Formula> ALL = List.of(
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
            ReachFormulas.RUN,
            ReachFormulas.POWER);

    private CircuitFormulas() {}
}
