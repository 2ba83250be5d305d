// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.SharedQuantity;

/**
 * Orders calculators so that each comes after those that provide what it consumes; among equals by id, so that the order does not
 * depend on how they were found. Calculators that depend on one another in a circle come last, by id; what is not provided by then is missing to them.
 */
final class CalculatorOrder {
    private CalculatorOrder() {}

    static List<Calculator> of(List<Calculator> found) {
        List<Calculator> waiting = new ArrayList<>(found);
        waiting.sort(Comparator.comparing(calculator -> calculator.descriptor().id()));
        List<Calculator> ordered = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Calculator next = waiting.stream()
                    .filter(candidate -> !waitsForAny(candidate, waiting))
                    .findFirst()
                    .orElse(waiting.get(0));
            // By itself: a calculator's own equals may say anything.
            waiting.removeIf(each -> each == next);
            ordered.add(next);
        }
        return List.copyOf(ordered);
    }

    private static boolean waitsForAny(Calculator candidate, List<Calculator> waiting) {
        Set<SharedQuantity> taken = new LinkedHashSet<>(candidate.descriptor().consumes());
        return waiting.stream()
                .filter(other -> other != candidate)
                .anyMatch(other -> other.descriptor().provides().stream().anyMatch(taken::contains));
    }
}
