// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.choices;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What an estimator decides of a quote by hand.
 *
 * @param heaters ids of the heaters offered, in this order, the recommended one first; none lets the verdicts decide
 * @param reason why the first one is recommended, in words for the customer; empty for the reason that is worked out
 * @param lines what is added
 * @param quantities other quantities of what works need, by the code of the item: they take the place of those worked out
 * @param without ids of works that are not to be proposed where another one does as well
 * @param discountShare share of each option's sum without tax that is given, 0 to 1; null for none, or for an amount
 * @param discountAmount amount without tax that is given; null for none, or for a share
 * @param discountReason what the customer reads of it
 */
public record QuoteChoices(
        List<String> heaters,
        String reason,
        List<OwnLine> lines,
        Map<String, BigDecimal> quantities,
        List<String> without,
        @Nullable BigDecimal discountShare,
        @Nullable BigDecimal discountAmount,
        String discountReason) {
    /** Nothing is decided by hand. */
    public static final QuoteChoices NONE =
            new QuoteChoices(List.of(), "", List.of(), Map.of(), List.of(), null, null, "");

    public QuoteChoices {
        heaters = List.copyOf(heaters);
        lines = List.copyOf(lines);
        quantities = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(quantities));
        without = List.copyOf(without);
    }

    /** Whether anything is decided by hand. */
    public boolean any() {
        return !equals(NONE);
    }

    /** Whether a discount is given. */
    public boolean discounted() {
        return discountShare != null || discountAmount != null;
    }

    /** With these heaters offered in this order, and the first one recommended for this reason. */
    public QuoteChoices offering(List<String> offered, String why) {
        return new QuoteChoices(
                offered, why.strip(), lines, quantities, without, discountShare, discountAmount, discountReason);
    }

    /** With a line more. */
    public QuoteChoices adding(OwnLine line) {
        List<OwnLine> more = new ArrayList<>(lines);
        more.add(line);
        return withLines(more);
    }

    /** With these lines added, and no others. */
    public QuoteChoices withLines(List<OwnLine> added) {
        return new QuoteChoices(
                heaters, reason, added, quantities, without, discountShare, discountAmount, discountReason);
    }

    /** With another quantity of what works need; null takes the one that is worked out. */
    public QuoteChoices quantity(String code, @Nullable BigDecimal quantity) {
        Map<String, BigDecimal> changed = new LinkedHashMap<>(quantities);
        if (quantity == null) {
            changed.remove(code);
        } else {
            changed.put(code, quantity);
        }
        return new QuoteChoices(
                heaters, reason, lines, changed, without, discountShare, discountAmount, discountReason);
    }

    /** With a work that is not to be proposed. */
    public QuoteChoices without(String work) {
        List<String> more = new ArrayList<>(without);
        if (!more.contains(work)) {
            more.add(work);
        }
        return new QuoteChoices(
                heaters, reason, lines, quantities, more, discountShare, discountAmount, discountReason);
    }

    /**
     * With a discount: a share or an amount; neither takes it away.
     *
     * @throws IllegalArgumentException if both are given, or the one that is cannot be one
     */
    public QuoteChoices discount(@Nullable BigDecimal share, @Nullable BigDecimal amount, String why) {
        boolean wrongShare = share != null && (share.signum() < 0 || share.compareTo(BigDecimal.ONE) > 0);
        if ((share != null && amount != null) || wrongShare || (amount != null && amount.signum() < 0)) {
            throw new IllegalArgumentException("a discount is a share from 0 to 1, or an amount of 0 or more");
        }
        return new QuoteChoices(heaters, reason, lines, quantities, without, share, amount, why.strip());
    }
}
