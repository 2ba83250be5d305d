// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Verdict;

class RowStoreTest {
    private static List<List<List<@Nullable Object>>> entry(int number) {
        List<@Nullable Object> row = Arrays.asList(
                number,
                "Straße " + number,
                null,
                new BigDecimal("367.10"),
                LocalDate.of(2026, 2, 28),
                Verdict.SUITS,
                "");
        return List.of(List.of(row, row), List.of(), List.of(row));
    }

    @Test
    void whatIsPutInComesOutInAnyOrder() throws IOException {
        try (RowStore store = new RowStore()) {
            for (int number = 0; number < 1000; number++) {
                store.add(entry(number));
            }
            assertEquals(1000, store.size());
            for (int number = 999; number >= 0; number--) {
                assertEquals(entry(number), store.get(number));
            }
        }
    }
}
