// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Contingency and discount have a line for each tax class that they touch, and none of nothing. */
class AdjustmentsTest {
    private final Adjustments adjustments = new Adjustments(new PriceList(DemoBook.read(), DemoBook.DAY));
    private final List<PricedLine> lines =
            List.of(line(TaxClass.STANDARD, "200.00"), line(TaxClass.REDUCED, "100.00"), line(TaxClass.ZERO, "0.00"));

    private static PricedLine line(TaxClass taxClass, String net) {
        Money money = Money.parse("GBP " + net);
        return new PricedLine(
                PricedLine.Kind.ITEM,
                Section.REMEDIAL,
                "item",
                null,
                BigDecimal.ONE,
                money.toBigMoney(),
                money,
                null,
                taxClass,
                null);
    }

    private static List<String> amounts(List<PricedLine> lines) {
        return lines.stream().map(line -> line.taxClass() + " " + line.net()).toList();
    }

    @Test
    void aContingencyIsAShareOfEachClassThatHasAPrice() {
        assertEquals(
                List.of("STANDARD GBP 10.00", "REDUCED GBP 5.00"),
                amounts(adjustments.contingency(lines, new BigDecimal("0.05"))));
    }

    @Test
    void aContingencyOfNothingHasNoLine() {
        assertEquals(List.of(), adjustments.contingency(lines, BigDecimal.ZERO));
    }

    @Test
    void aDiscountIsDividedOverTheClassesThatHaveAPrice() {
        assertEquals(
                List.of("STANDARD GBP -20.00", "REDUCED GBP -10.00"),
                amounts(adjustments.discount(lines, Discount.of(Money.parse("GBP 30.00"), "neighbour"))));
    }

    @Test
    void aPennyOfDiscountIsOneLine() {
        assertEquals(
                List.of("STANDARD GBP -0.01"),
                amounts(adjustments.discount(lines, Discount.of(Money.parse("GBP 0.01"), "neighbour"))));
    }
}
