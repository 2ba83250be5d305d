// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import twinfeed.model.pricebook.PriceBook;

class RemedyPricesTest {
    private final PriceBook book = DemoBook.read();

    /** 51.86 for the cable with waste, 90.00 to run it, 3.13 for clips, 22.50 for the old one, 5.00 to notify it. */
    @Test
    void countsMaterialLabourAndWhatComesWithIt() {
        RemedyPrices prices = RemedyPrices.withReplacement(book, DemoBook.DAY);
        RemedyPrice cable = prices.price(RequiredItem.of(Samples.newCable()));
        assertEquals(Money.parse("GBP 172.49"), cable.net());
        assertEquals(0, cable.leadDays());
        assertFalse(cable.enquiry());
    }

    @Test
    void countsOnceWhatTheJobNeedsAnyway() {
        RemedyPrices prices = RemedyPrices.withReplacement(book, DemoBook.DAY);
        List<RequiredItem> tests = List.of(
                RequiredItem.of("task-isolate", 1),
                RequiredItem.of("task-test-certify", 1),
                RequiredItem.of("certificate", 1));
        assertTrue(prices.price(tests).net().isZero());
    }

    /** A breaker 9.00 and 20 min, 18.00; a second one of another size the same with its own price. */
    @Test
    void addsDifferentWork() {
        RemedyPrices prices = RemedyPrices.withReplacement(book, DemoBook.DAY);
        List<RequiredItem> breaker =
                List.of(RequiredItem.of("breaker-40", 1), RequiredItem.of("task-change-device", 1));
        List<RequiredItem> isolator =
                List.of(RequiredItem.of("isolator-50", 1), RequiredItem.of("task-change-isolator", 1));
        assertEquals(Money.parse("GBP 27.00"), prices.price(breaker).net());
        assertEquals(Money.parse("GBP 45.00"), prices.price(isolator).net());
        assertEquals(
                Money.parse("GBP 72.00"),
                prices.priceAll(List.of(breaker, isolator)).net());
    }

    /** Without a new heater a visit has 60 min of isolating and testing; one of at least 120 min has room for 60 more. */
    @Test
    void fillsTheLeastVisitFirst() {
        book.setMinimumMinutes(120);
        RemedyPrices prices = RemedyPrices.withoutReplacement(book, DemoBook.DAY);
        assertTrue(
                prices.price(List.of(RequiredItem.of("task-pipework", 1))).net().isZero());
        assertEquals(
                Money.parse("GBP 54.00"),
                prices.price(List.of(RequiredItem.of("task-pipework", 2))).net());
    }

    @Test
    void tellsEnquiriesLeadTimesAndMissingCodes() {
        RemedyPrices prices = RemedyPrices.withReplacement(book, DemoBook.DAY);
        RemedyPrice price = prices.price(List.of(
                RequiredItem.of("operator-fuse", 1), RequiredItem.of("breaker-45", 1), RequiredItem.of("no-such", 1)));
        assertTrue(price.enquiry());
        assertEquals(28, price.leadDays());
        assertEquals(List.of("no-such"), price.missing());
        assertEquals(Money.parse("GBP 12.50"), price.net());
        assertTrue(prices.priced(List.of(RequiredItem.of("breaker-45", 1))));
        assertFalse(prices.priced(List.of(RequiredItem.of("breaker-45", 1), RequiredItem.of("operator-fuse", 1))));
        assertFalse(prices.priced(List.of(RequiredItem.of("no-such", 1))));
    }
}
