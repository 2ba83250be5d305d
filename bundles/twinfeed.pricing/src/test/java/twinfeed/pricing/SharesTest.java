// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.units.Ratio;

class SharesTest {
    @ParameterizedTest
    @CsvSource({
        "17.5 %, 0.175",
        "17.5%, 0.175",
        "0.2, 0.2",
        "20 %, 0.2",
        "1000 %, 10",
        "0.10000000000000000001, 0.10000000000000000001",
        "1e-3, 0.001",
        "17.5 % ± 1 %, 0.175"
    })
    void aRatioIsExactlyWhatWasTypedWithoutItsTolerance(String typed, BigDecimal exact) {
        assertEquals(exact, Shares.exact(Ratio.valueOf(typed)));
    }

    @Test
    void aRatioThatWasReckonedIsTheShortestDecimalOfItsValue() {
        assertEquals(new BigDecimal("0.0375"), Shares.exact(Ratio.ofSi(0.0375)));
    }

    @ParameterizedTest
    @CsvSource({"0.175, 17.5 %", "0.20, 20 %", "1, 100 %", "12, 1200 %", "0, 0 %", "0.00005, 0.005 %"})
    void aShareIsReadAsAPercentage(BigDecimal share, String read) {
        assertEquals(read, Shares.percent(share));
    }

    @ParameterizedTest
    @CsvSource({"1E+3, 1000", "2.500, 2.5", "7, 7", "0.00, 0"})
    void aNumberIsWrittenOutWithoutNeedlessZeros(BigDecimal number, String written) {
        assertEquals(written, Shares.plain(number).toString());
    }
}
