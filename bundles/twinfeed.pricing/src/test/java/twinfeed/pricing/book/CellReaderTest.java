// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CellReaderTest {
    private final List<RowRemark> refused = new ArrayList<>();
    private final CellReader cells = new CellReader("book.csv", refused);

    @Test
    void aWholeNumberThatCannotBeReadIsRefusedAndIsNotNought() {
        assertNull(cells.whole(9, "lead-days", "soon"));
        assertEquals(List.of(new RowRemark("book.csv", 9, "lead-days", "notWhole", List.of("soon"))), refused);
    }

    @Test
    void aBlankCellIsNoNumberAndNotRefused() {
        assertNull(cells.whole(9, "lead-days", ""));
        assertEquals(0, cells.whole(9, "lead-days", "0"));
        assertEquals(List.of(), refused);
    }
}
