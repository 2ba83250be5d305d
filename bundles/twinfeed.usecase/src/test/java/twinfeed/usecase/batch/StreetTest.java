// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Addresses as people write them in Britain and in Germany; common practice, no standard. */
class StreetTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "3 Alder Beck; Netherquill | Alder Beck, Netherquill",
                "12a Rowan Lane, Netherquill | Rowan Lane, Netherquill",
                "Flat 3; 12-14 Sorrel Row; Netherquill | Sorrel Row, Netherquill",
                "Osier House; 5 Osier Quay | Osier Quay",
                "Lindenweg 7; 12345 Unterquell | Lindenweg, 12345 Unterquell",
                "Am Anger 12 b; Unterquell | Am Anger, Unterquell",
                "Wohnung 4; Lindenweg 7 | Lindenweg",
                "2. OG; Lindenweg 7 | Lindenweg",
                "the old forge | ''",
                "'' | ''",
                "42 | ''",
            })
    void aStreetIsTheLineWithAHouseNumber(String address, String street) {
        assertEquals(street, Street.of(address));
    }
}
