// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.repair;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Repair or replace, by price without tax over one horizon. Amounts that rest on chances are expected values, no quotes.
 *
 * @param currency currency by ISO 4217 code
 * @param lines the repair policy line by line; they add up to {@code repair}
 * @param repair expected price of the repair: next test, first part, and a next visit as far as the first does not cure
 * @param later expected price of later failures of the repaired unit over the horizon
 * @param total both together
 * @param years the horizon in years
 * @param replacements new units over the same horizon, cheapest first; empty if none can be quoted
 * @param breakEvenAge least age of the unit, whole years, from which the cheapest replacement costs no more than the repair; absent
 *     if there is none up to 40 years or nothing to compare with
 * @param breakEvenPrice price of the repair at which it costs as much as the cheapest replacement; absent if there is nothing to compare with
 * @param sentence the advice in plain words for the customer
 * @param assumptions assumptions that took part, in words
 * @param missing codes that the price book lacks: then the sums are lower bounds
 */
public record RepairAdvice(
        String currency,
        List<Line> lines,
        BigDecimal repair,
        BigDecimal later,
        BigDecimal total,
        int years,
        List<Replacement> replacements,
        @Nullable Integer breakEvenAge,
        @Nullable BigDecimal breakEvenPrice,
        String sentence,
        List<String> assumptions,
        List<String> missing) {
    public RepairAdvice {
        lines = List.copyOf(lines);
        replacements = List.copyOf(replacements);
        assumptions = List.copyOf(assumptions);
        missing = List.copyOf(missing);
    }

    /**
     * A line of the policy.
     *
     * @param title what it is
     * @param amount its expected price, without tax
     */
    public record Line(String title, BigDecimal amount) {}

    /**
     * A new unit.
     *
     * @param heater its id
     * @param title what a customer reads
     * @param price its price with all work, without tax
     * @param later expected price of later failures over the horizon
     * @param total both together
     * @param enquiry whether something in it can only be had on enquiry: then the price is a lower bound
     */
    public record Replacement(
            String heater, String title, BigDecimal price, BigDecimal later, BigDecimal total, boolean enquiry) {}
}
