// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.math.BigDecimal;
import java.util.Optional;
import twinfeed.desktop.text.Decimals;
import twinfeed.desktop.text.Words;
import twinfeed.usecase.choices.QuoteChoices;

/**
 * A discount as somebody types it.
 *
 * @param size {@code 5 %} for a share, {@code 50} for an amount without tax; empty for none
 * @param reason what the customer reads
 */
public record DiscountEntry(String size, String reason) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** What is decided by hand already, as it would be typed. */
    public static DiscountEntry of(QuoteChoices choices, Words words) {
        BigDecimal share = choices.discountShare();
        BigDecimal amount = choices.discountAmount();
        String size = share != null
                ? Decimals.write(share.multiply(HUNDRED), words.locale()) + " %"
                : amount == null ? "" : Decimals.write(amount, words.locale());
        return new DiscountEntry(size, choices.discountReason());
    }

    private boolean isShare() {
        return size.strip().endsWith("%");
    }

    private Optional<BigDecimal> number(Words words) {
        return Decimals.read(size.strip().replaceFirst("\\s*%$", ""), words.locale())
                .filter(number -> number.signum() > 0)
                .filter(number -> !isShare() || number.compareTo(HUNDRED) <= 0);
    }

    /** What is wrong with it, in words; empty if nothing is. */
    public String problem(Words words) {
        return size.isBlank() || number(words).isPresent() ? "" : words.get("discount.problem");
    }

    /**
     * The choices with this discount in place of the one before.
     *
     * @throws IllegalArgumentException if there is a {@linkplain #problem problem}
     */
    public QuoteChoices in(QuoteChoices choices, Words words) {
        if (size.isBlank()) {
            return choices.discount(null, null, "");
        }
        BigDecimal number = number(words).orElseThrow(() -> new IllegalArgumentException(problem(words)));
        return isShare()
                ? choices.discount(number.movePointLeft(2), null, reason)
                : choices.discount(null, number, reason);
    }
}
