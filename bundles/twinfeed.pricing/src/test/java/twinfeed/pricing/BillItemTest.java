// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** Who asks for an item, and what they remark. */
class BillItemTest {
    private final BillItem item = new BillItem(
            new PriceList(DemoBook.read(), DemoBook.DAY).find("breaker-40").orElseThrow(), Section.REMEDIAL);

    private void add(String reason, String note) {
        item.add(BigDecimal.ONE, reason, note);
    }

    @Test
    void hasNoNotesWhereNobodyRemarksAnything() {
        add("cable", "");
        assertEquals("", item.notes());
    }

    @Test
    void keepsEachRemarkOnceInTheirOrder() {
        add("cable", "beside the meter");
        add("board", "");
        add("isolator", "of the same make");
        add("spare", "beside the meter");
        assertEquals("beside the meter; of the same make", item.notes());
        assertEquals("cable, board, isolator, spare", item.reasons());
        assertEquals(BigDecimal.valueOf(4), item.quantity());
    }
}
