// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.demand;

import java.util.List;
import twinfeed.engineering.numeric.Require;

/**
 * The current that a household is taken to draw at once, and how it came about.
 *
 * @param steps what each load, or each kind counted together, adds
 */
public record Demand(List<Step> steps) {
    /**
     * One line of the sum.
     *
     * @param kind the kind of load
     * @param ids the loads of this line
     * @param connectedA their current, A
     * @param demandA what of it counts, A
     */
    public record Step(String kind, List<String> ids, double connectedA, double demandA) {
        /** Copies the list. */
        public Step {
            ids = List.copyOf(ids);
        }
    }

    /** Copies the list. */
    public Demand {
        steps = List.copyOf(steps);
    }

    /** Returns the whole demand, A. */
    public double totalA() {
        return Require.result(steps.stream().mapToDouble(Step::demandA).sum());
    }

    /** Returns the whole connected current, A, without diversity. */
    public double connectedA() {
        return Require.result(steps.stream().mapToDouble(Step::connectedA).sum());
    }
}
