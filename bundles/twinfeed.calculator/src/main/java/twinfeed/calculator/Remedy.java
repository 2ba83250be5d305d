// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import twinfeed.model.survey.Survey;

/**
 * A change to the survey that a fitter can make, with what it needs.
 *
 * @param id unique among the remedies proposed for one option; the same work proposed by two calculators has the same id
 * @param kind at most one remedy of a kind is chosen; key of the text {@code remedy.KIND}
 * @param arguments values that the text names
 * @param items what it needs, by price-book code
 * @param enquiry whether its price can only be had on enquiry
 * @param leadDays days until it can be done
 * @param edit makes the change on a copy of the survey; pure but for that copy
 */
public record Remedy(
        String id,
        String kind,
        Map<String, Object> arguments,
        List<Item> items,
        boolean enquiry,
        int leadDays,
        Consumer<Survey> edit) {
    /**
     * One thing that a remedy needs.
     *
     * @param code price-book code
     * @param quantity how much, in the item's unit
     */
    public record Item(String code, BigDecimal quantity) {
        /** A whole number of them. */
        public static Item of(String code, long quantity) {
            return new Item(code, BigDecimal.valueOf(quantity));
        }
    }

    public Remedy {
        arguments = Map.copyOf(arguments);
        items = List.copyOf(items);
    }
}
