// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.model.pricebook.PriceBook;

/** A book read anew beside the one that was used before. */
class ImportReportTest {
    private static ImportReport read(String rows) throws IOException {
        return PriceBookCsvTest.read(PriceBookCsvTest.HEAD + rows);
    }

    @Test
    void tellsWhatTheBookChangesAgainstAnEarlierOne() throws IOException {
        PriceBook earlier = read("a,A,each,,1.00,,,standard,,,,,,\n").bookOrThrow();
        BookComparison comparison =
                read("b,B,each,,1.00,,,standard,,,,,,\n").against(earlier).orElseThrow();
        assertEquals(List.of("b"), comparison.added());
        assertEquals(List.of("a"), comparison.removed());
        assertFalse(comparison.same());
    }

    @Test
    void aRefusedBookChangesNothing() throws IOException {
        PriceBook earlier = read("a,A,each,,1.00,,,standard,,,,,,\n").bookOrThrow();
        assertTrue(read("a,A,each,,-1,,,standard,,,,,,\n").against(earlier).isEmpty());
    }
}
