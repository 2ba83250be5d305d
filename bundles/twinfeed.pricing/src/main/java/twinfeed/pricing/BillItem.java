// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** How much of one item a job needs, and who asks for it. */
final class BillItem {
    private final PricedItem item;
    private final Section section;
    private final List<String> reasons = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private BigDecimal quantity = BigDecimal.ZERO;

    BillItem(PricedItem item, Section section) {
        this.item = item;
        this.section = section;
    }

    /** Adds a need; of an item needed once per job the larger quantity counts, of others the sum. */
    void add(BigDecimal more, String reason, String note) {
        quantity = item.oncePerJob() ? quantity.max(more) : quantity.add(more);
        if (!reasons.contains(reason)) {
            reasons.add(reason);
        }
        if (!note.isEmpty() && !notes.contains(note)) {
            notes.add(note);
        }
    }

    PricedItem item() {
        return item;
    }

    Section section() {
        return section;
    }

    BigDecimal quantity() {
        return quantity;
    }

    String reasons() {
        return String.join(", ", reasons);
    }

    String notes() {
        return String.join("; ", notes);
    }
}
