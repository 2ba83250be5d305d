// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.search;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Remedy;

/**
 * What a set of works costs, as the search for the least costly set compares it: works whose price nobody knows weigh most, then
 * the price, then the time until all can be done. Adding a work never makes a set cheaper.
 *
 * @param enquiries how many works can only be priced on enquiry
 * @param price price of the others, in one currency without tax; 0 or more
 * @param leadDays days until the last can be done
 */
public record WorkCost(int enquiries, BigDecimal price, int leadDays) implements Comparable<WorkCost> {
    private static final Comparator<WorkCost> ORDER = Comparator.comparingInt(WorkCost::enquiries)
            .thenComparing(WorkCost::price)
            .thenComparingInt(WorkCost::leadDays);

    /** Prices a set of works. */
    @FunctionalInterface
    public interface Source {
        /** What the works cost together; monotone: a work more never costs less. */
        WorkCost of(List<Remedy> works);

        /** The same for one heater, whose fitting may fill a visit that works would fill otherwise. */
        default Source with(Candidate candidate) {
            return this;
        }
    }

    /** Without a price book every work counts one. */
    public static final Source BY_COUNT = works -> new WorkCost(
            (int) works.stream().filter(Remedy::enquiry).count(),
            BigDecimal.valueOf(works.size()),
            works.stream().mapToInt(Remedy::leadDays).max().orElse(0));

    @Override
    public int compareTo(WorkCost other) {
        return ORDER.compare(this, other);
    }
}
