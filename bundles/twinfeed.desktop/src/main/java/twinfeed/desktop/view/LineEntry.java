// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.math.BigDecimal;
import java.util.Optional;
import twinfeed.desktop.text.Decimals;
import twinfeed.desktop.text.Words;
import twinfeed.usecase.choices.OwnLine;

/**
 * A line of a quote as somebody types it.
 *
 * @param heater the option that it is for; empty for every option
 * @param code item of the price book; empty for own words
 * @param quantity how much
 * @param description own words
 * @param unit own unit
 * @param price own price of one, without tax
 * @param taxClass own tax class
 */
public record LineEntry(
        String heater, String code, String quantity, String description, String unit, String price, String taxClass) {
    /** What is wrong with it, in words; empty if nothing is. */
    public String problem(Words words) {
        Optional<BigDecimal> much = Decimals.read(quantity, words.locale());
        if (much.isEmpty() || much.get().signum() <= 0) {
            return words.get("line.problem.quantity");
        }
        if (!code.isEmpty()) {
            return "";
        }
        if (description.isBlank()) {
            return words.get("line.problem.description");
        }
        Optional<BigDecimal> each = Decimals.read(price, words.locale());
        return each.isEmpty() || each.get().signum() < 0 ? words.get("line.problem.price") : "";
    }

    /**
     * The line.
     *
     * @throws IllegalArgumentException if there is a {@linkplain #problem problem}
     */
    public OwnLine line(Words words) {
        BigDecimal much =
                Decimals.read(quantity, words.locale()).orElseThrow(() -> new IllegalArgumentException(problem(words)));
        return code.isEmpty()
                ? new OwnLine(
                        heater,
                        "",
                        much,
                        description.strip(),
                        unit.strip(),
                        Decimals.read(price, words.locale()).orElse(null),
                        taxClass)
                : OwnLine.ofBook(heater, code, much);
    }
}
