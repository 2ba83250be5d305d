// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class AllocationProperties {
    private static final String SEED = "20261125";

    @Provide
    Arbitrary<List<BigDecimal>> weights() {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, new BigDecimal("1000"))
                .ofScale(3)
                .list()
                .ofMinSize(1)
                .ofMaxSize(12)
                .filter(list -> list.stream().anyMatch(weight -> weight.signum() > 0));
    }

    @Property(seed = SEED)
    void noPennyIsLostOrMade(@ForAll("weights") List<BigDecimal> weights, @ForAll int pennies) {
        Money amount = Money.ofMinor(CurrencyUnit.GBP, pennies);
        assertEquals(amount, Money.total(CurrencyUnit.GBP, Allocation.divide(amount, weights)));
    }

    @Property(seed = SEED)
    void noPartIsOffByAPenny(@ForAll("weights") List<BigDecimal> weights, @ForAll int pennies) {
        Money amount = Money.ofMinor(CurrencyUnit.GBP, pennies);
        BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        List<Money> parts = Allocation.divide(amount, weights);
        for (int i = 0; i < parts.size(); i++) {
            BigDecimal exact = amount.getAmount().multiply(weights.get(i)).divide(sum, MathContext.DECIMAL128);
            BigDecimal off = parts.get(i).getAmount().subtract(exact).abs();
            assertTrue(off.compareTo(new BigDecimal("0.01")) < 0, parts + " of " + weights);
        }
    }

    @Property(seed = SEED)
    void nothingGoesToNothing(@ForAll("weights") List<BigDecimal> weights, @ForAll int pennies) {
        List<Money> parts = Allocation.divide(Money.ofMinor(CurrencyUnit.GBP, pennies), weights);
        for (int i = 0; i < parts.size(); i++) {
            assertTrue(weights.get(i).signum() > 0 || parts.get(i).isZero());
        }
    }

    /** Handworked: 100 pence in three are 33.33 each; the penny left goes to the first of equals. */
    @Example
    void threeEqualParts() {
        List<BigDecimal> equal = List.of(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE);
        assertEquals(pence(34, 33, 33), Allocation.divide(Money.parse("GBP 1.00"), equal));
        assertEquals(pence(-34, -33, -33), Allocation.divide(Money.parse("GBP -1.00"), equal));
    }

    /** Handworked: 5 pence at 70 % and 30 % are 3.5 and 1.5; one penny is left and both lost a half: the first gets it. */
    @Example
    void anEqualRemainderGoesToTheFirst() {
        assertEquals(
                pence(4, 1),
                Allocation.divide(Money.parse("GBP 0.05"), List.of(new BigDecimal("0.7"), new BigDecimal("0.3"))));
    }

    @Example
    void currencyWithoutDecimals() {
        List<Money> parts =
                Allocation.divide(Money.parse("JPY 10"), List.of(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE));
        assertEquals(List.of(Money.parse("JPY 4"), Money.parse("JPY 3"), Money.parse("JPY 3")), parts);
    }

    @Example
    void refusesNoWeights() {
        Money amount = Money.parse("GBP 1.00");
        assertThrows(IllegalArgumentException.class, () -> Allocation.divide(amount, List.of()));
        assertThrows(IllegalArgumentException.class, () -> Allocation.divide(amount, List.of(BigDecimal.ZERO)));
        assertThrows(
                IllegalArgumentException.class,
                () -> Allocation.divide(amount, List.of(BigDecimal.ONE, BigDecimal.ONE.negate())));
    }

    private static List<Money> pence(long... pence) {
        return java.util.Arrays.stream(pence)
                .mapToObj(one -> Money.ofMinor(CurrencyUnit.GBP, one))
                .toList();
    }
}
