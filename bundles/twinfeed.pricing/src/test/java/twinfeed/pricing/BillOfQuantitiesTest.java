// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class BillOfQuantitiesTest {
    private final BillOfQuantities bill = new BillOfQuantities(new PriceList(DemoBook.read(), DemoBook.DAY));

    private BillItem item(String code) {
        return bill.all().stream()
                .filter(one -> one.item().code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private List<String> codes() {
        return bill.all().stream().map(one -> one.item().code()).toList();
    }

    @Test
    void hasWhatIsAskedForAndThePriceBookKnows() {
        bill.add(RequiredItem.of("breaker-40", 1), "breaker");
        bill.add(RequiredItem.of("no-such", 1), "breaker");
        assertTrue(bill.has("breaker-40"));
        assertFalse(bill.has("breaker-45"));
        assertFalse(bill.has("no-such"));
    }

    @Test
    void whatTheWorkNamesInFullIsNotAskedForByTheJobAsWell() {
        bill.add(RequiredItem.of("cable-10", 5), "cable");
        bill.add(RequiredItem.of("clips-cable", 5), "cable");
        bill.addCompanions("job");
        assertEquals(BigDecimal.valueOf(5), item("clips-cable").quantity());
        assertEquals("cable", item("clips-cable").reasons());
        assertEquals("job", item("remove-cable").reasons());
    }

    @Test
    void whatTheWorkNamesInPartIsMadeUpByTheJob() {
        bill.add(RequiredItem.of("cable-10", 5), "cable");
        bill.add(RequiredItem.of("clips-cable", 2), "cable");
        bill.addCompanions("job");
        assertEquals(BigDecimal.valueOf(5), item("clips-cable").quantity());
        assertEquals("cable, job", item("clips-cable").reasons());
    }

    /** The visit holds travel and safe isolation: to name them beside it does not make it work on the circuit. */
    @Test
    void aVisitInsideTheUnitStaysOneWhereItsTravelIsNamedToo() {
        bill.add(RequiredItem.of(FaultReport.Repair.VISIT, 1), "repair");
        bill.add(RequiredItem.of("part-elements", 1), "repair");
        bill.add(RequiredItem.of("travel", 1), "repair");
        bill.add(RequiredItem.of("task-isolate", 1), "repair");
        bill.complete(false, "job");
        assertEquals(List.of(FaultReport.Repair.VISIT, "part-elements"), codes());
    }
}
