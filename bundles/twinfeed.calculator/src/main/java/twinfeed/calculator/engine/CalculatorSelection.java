// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;

/**
 * Which of the calculators that were found are used: one of each id, the newest where there are several, and none that cannot say what
 * it is. What is left out is named.
 */
final class CalculatorSelection {
    private final Map<String, Calculator> byId = new LinkedHashMap<>();
    private final List<CalculatorProblem> problems = new ArrayList<>();

    CalculatorSelection(List<Calculator> found) {
        found.forEach(this::add);
    }

    List<Calculator> calculators() {
        return List.copyOf(byId.values());
    }

    List<CalculatorProblem> problems() {
        return List.copyOf(problems);
    }

    private void add(Calculator calculator) {
        CalculatorDescriptor said;
        try {
            said = calculator.descriptor();
            if (said.id().isEmpty()) {
                throw new IllegalStateException("its id is empty");
            }
        } catch (RuntimeException | LinkageError | StackOverflowError | AssertionError e) {
            problems.add(new CalculatorProblem(
                    CalculatorSource.of(calculator), CalculatorProblem.Kind.NO_DESCRIPTOR, Containment.reason(e)));
            return;
        }
        Calculator other = byId.putIfAbsent(said.id(), calculator);
        if (other != null) {
            String version = other.descriptor().version();
            boolean newer = VERSIONS.compare(said.version(), version) > 0;
            if (newer) {
                byId.put(said.id(), calculator);
            }
            older(newer ? other : calculator, newer ? said.version() : version, newer ? calculator : other);
        }
    }

    private void older(Calculator unused, String usedVersion, Calculator used) {
        problems.add(new CalculatorProblem(
                CalculatorSource.of(unused) + " (" + unused.descriptor().id() + " "
                        + unused.descriptor().version() + ")",
                CalculatorProblem.Kind.OLDER,
                CalculatorSource.of(used) + " (" + usedVersion + ")"));
    }

    /** By number, part by part: 2.10 is newer than 2.9, and 2.0 than 2.0-SNAPSHOT. */
    static final Comparator<String> VERSIONS = (one, two) -> {
        String[] first = one.split("[.-]");
        String[] second = two.split("[.-]");
        for (int i = 0; i < Math.max(first.length, second.length); i++) {
            int order = Integer.compare(number(first, i), number(second, i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    };

    /** A part that is missing is 0; one that is no number comes before all numbers. */
    private static int number(String[] parts, int at) {
        if (at >= parts.length) {
            return 0;
        }
        return parts[at].matches("\\d{1,9}") ? Integer.parseInt(parts[at]) : -1;
    }
}
