// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import twinfeed.model.pricebook.PriceBook;

/** What a visit costs that renews parts. Amounts by hand from the demonstration's prices, the hour at 54.00. */
class RepairPriceTest {
    private final PriceBook book = DemoBook.read();

    private RemedyPrices prices() {
        return RemedyPrices.withoutReplacement(book, DemoBook.DAY);
    }

    /** Visit 20.00 and 45 min, 40.50; part 69.00 and 40 min, 36.00. */
    @Test
    void aVisitAndThePartAreCharged() {
        RemedyPrice repair = prices().repair(List.of("part-elements"));
        assertEquals(Money.parse("GBP 165.50"), repair.net());
        assertEquals(5, repair.leadDays());
        assertFalse(repair.enquiry());
        assertEquals(List.of(), repair.missing());
    }

    /** Visit 20.00 and 40.50, isolator 18.00 and 27.00, and what work on the circuit needs: test 40.50, certificate 15.00. */
    @Test
    void workOnTheCircuitIsTestedAndCertified() {
        RemedyPrice repair = prices().repair(List.of("isolator-50", "task-change-isolator"));
        assertEquals(Money.parse("GBP 161.00"), repair.net());
    }

    @Test
    void theSlowestPartDecidesWhenTheVisitCanBe() {
        assertEquals(
                7, prices().repair(List.of("part-board", "part-solenoid-valve")).leadDays());
        assertEquals(0, prices().repair(List.of("part-hose")).leadDays());
    }

    @Test
    void onePartOnEnquiryPutsTheRepairOnEnquiry() {
        assertTrue(prices().repair(List.of("part-hose", "operator-fuse")).enquiry());
    }

    @Test
    void aPartThatTheBookLacksIsNamed() {
        assertEquals(
                List.of("part-unheard-of"),
                prices().repair(List.of("part-hose", "part-unheard-of")).missing());
    }

    @Test
    void pricesAreInTheCurrencyOfTheBook() {
        assertEquals(CurrencyUnit.GBP, prices().currency());
        book.setCurrency("EUR");
        assertEquals(CurrencyUnit.EUR, prices().currency());
    }
}
