// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.text.Decimals;
import twinfeed.desktop.text.Words;
import twinfeed.usecase.choices.QuoteChoices;

/** What is typed in the dialogues that change the quote. */
final class QuoteEntriesTest {
    private final Words english = new Words(Locale.UK);
    private final Words german = new Words(Locale.GERMANY);

    private static OfferList list() {
        return new OfferList(
                List.of(
                        new OfferList.Entry("a", "A", false),
                        new OfferList.Entry("b", "B", false),
                        new OfferList.Entry("c", "C", false),
                        new OfferList.Entry("d", "D", false),
                        new OfferList.Entry("e", "E", false)),
                List.of("c", "a"));
    }

    @Test
    void offeredHeatersStandFirstInTheirOrder() {
        OfferList list = list();
        assertEquals(List.of("c", "a"), list.offered());
        assertEquals(0, list.move(1, -1));
        assertEquals(List.of("a", "c"), list.offered());
        assertEquals(0, list.move(0, -1), "at the top nothing happens");
    }

    @Test
    void oneToFourAreOffered() {
        OfferList list = list();
        list.offer(2, true);
        list.offer(3, true);
        assertTrue(list.possible());
        list.offer(4, true);
        assertFalse(list.possible(), "five");
        for (int i = 0; i < 5; i++) {
            list.offer(i, false);
        }
        assertFalse(list.possible(), "none");
    }

    @Test
    void discountIsAShareOrAnAmountInThePersonsWay() {
        QuoteChoices share = new DiscountEntry("7,5 %", "Treue").in(QuoteChoices.NONE, german);
        assertEquals(new BigDecimal("0.075"), share.discountShare());
        assertEquals("7,5 %", DiscountEntry.of(share, german).size());
        QuoteChoices amount = new DiscountEntry("50", "").in(share, english);
        assertEquals(new BigDecimal("50"), amount.discountAmount());
        assertFalse(new DiscountEntry("", "").in(amount, english).any());
        assertFalse(new DiscountEntry("101 %", "").problem(english).isEmpty());
        assertFalse(new DiscountEntry("-5", "").problem(english).isEmpty());
        assertFalse(new DiscountEntry("a lot", "").problem(english).isEmpty());
        assertEquals("", new DiscountEntry("100%", "").problem(english));
    }

    @Test
    void lineNeedsWordsAPriceAndAQuantity() {
        assertEquals("", new LineEntry("", "", "2", "Tiling", "m²", "40.50", "standard").problem(english));
        assertFalse(new LineEntry("", "", "0", "Tiling", "m²", "40", "standard")
                .problem(english)
                .isEmpty());
        assertFalse(new LineEntry("", "", "1", " ", "m²", "40", "standard")
                .problem(english)
                .isEmpty());
        assertFalse(new LineEntry("", "", "1", "Tiling", "m²", "", "standard")
                .problem(english)
                .isEmpty());
        assertEquals("", new LineEntry("", "cable-6", "1,5", "", "", "", "").problem(german));
        assertEquals(
                new BigDecimal("1.5"),
                new LineEntry("", "cable-6", "1,5", "", "", "", "").line(german).quantity());
    }

    @Test
    void moneyIsReadExactly() {
        assertEquals(new BigDecimal("0.1"), Decimals.read("0.1", Locale.UK).orElseThrow());
        assertEquals(
                new BigDecimal("1234.56"),
                Decimals.read("1234,56", Locale.GERMANY).orElseThrow());
        assertTrue(Decimals.read("1,234.56", Locale.UK).isEmpty(), "a thousands separator is not guessed");
        assertTrue(Decimals.read("1e3", Locale.UK).isEmpty());
        assertEquals("1234,5", Decimals.write(new BigDecimal("1234.50"), Locale.GERMANY));
    }
}
