// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is odd about a price but taken. */
class BookNoticesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "none",
            value = {
                "a,A,each,2.00,1.99,,,standard,,,,,,|belowCost",
                "a,A,each,2.00,2.00,,,standard,,,,,,|none",
                "a,A,each,2.00,2.01,,,standard,,,,,,|none",
                "a,A,each,,1.00,,,standard,,,,,,|none",
                "a,A,each,2.00,,0.5,,standard,,,,,,|none",
                "a,A,each,,,,,standard,,,,,,|onEnquiry",
                "a,A,each,,,,,standard,,,15,,,|labourOnly",
            })
    void isNamedForWhatItIs(String row, @Nullable String key) throws IOException {
        ImportReport report = PriceBookCsvTest.read(PriceBookCsvTest.HEAD + row + "\n");
        assertEquals(List.of(), report.refused());
        assertEquals(
                key == null ? List.of() : List.of(key),
                report.notices().stream().map(RowRemark::key).toList());
    }
}
