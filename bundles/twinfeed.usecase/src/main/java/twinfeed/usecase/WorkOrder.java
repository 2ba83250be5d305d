// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.RemedyKind;

/**
 * The order in which works are proposed: by the stage that their kind declares, within a stage calculator by calculator, and as each
 * declares them. Work whose kind nobody declares comes last. Which works are needed is found by their cost and not by this order.
 */
public final class WorkOrder {
    private final Map<String, Integer> places = new HashMap<>();
    private final Comparator<Remedy> order =
            Comparator.<Remedy>comparingInt(work -> place(work.kind())).thenComparing(Remedy::id);

    /** By what these calculators declare. */
    public WorkOrder(List<Calculator> calculators) {
        calculators.stream()
                .map(Calculator::descriptor)
                .sorted(Comparator.comparing(CalculatorDescriptor::id))
                .flatMap(declared -> declared.remedies().stream())
                .sorted(Comparator.comparing(RemedyKind::stage))
                .forEach(kind -> places.putIfAbsent(kind.key(), places.size()));
    }

    private int place(String kind) {
        return places.getOrDefault(kind, places.size());
    }

    /** The works in the order in which they are proposed. */
    public List<Remedy> of(List<Remedy> works) {
        return works.stream().sorted(order).toList();
    }
}
