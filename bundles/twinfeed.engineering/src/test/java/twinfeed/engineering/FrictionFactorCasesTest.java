// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.engineering.pipe.Pipe;

class FrictionFactorCasesTest {
    static Stream<CaseFile.Case> cases() {
        return CaseFile.read("friction-factor.csv").cases().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void agrees(CaseFile.Case row) {
        double expected = row.number("expected");
        double actual = Pipe.frictionFactor(row.number("reynolds"), row.number("relative_roughness"));
        assertEquals(expected, actual, expected * row.number("tolerance") / 100, row::toString);
    }
}
