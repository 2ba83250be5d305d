// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.opentest4j.AssertionFailedError;

/** The files of check values say where they come from, and a wrong value does fail. */
class CaseFileTest {
    @ParameterizedTest
    @CsvSource({
        "electrical.csv, 25",
        "heat.csv, 14",
        "hydraulics.csv, 25",
        "water-properties.csv, 8",
        "friction-factor.csv, 48",
        "mains-temperature.csv, 5"
    })
    void namesSourcesAndUnits(String name, int count) {
        CaseFile file = CaseFile.read(name);
        assertEquals(count, file.cases().size());
        assertTrue(file.head().stream().anyMatch(line -> line.startsWith("# source:")));
        assertTrue(file.head().stream().anyMatch(line -> line.startsWith("# units:")));
        file.cases().forEach(row -> assertFalse(row.text("source").isBlank(), row::toString));
    }

    @Test
    void aWrongValueFailsAndNamesItsSource() {
        var row = new CaseFile.Case(
                Map.of("expected", "10 / 20", "tolerance", "1 %", "source", "handbook, table 7", "id", "x"));
        row.agrees(10.05, 19.9);
        AssertionFailedError failure = assertThrows(AssertionFailedError.class, () -> row.agrees(10.05, 19.7));
        assertTrue(String.valueOf(failure.getMessage()).contains("handbook, table 7"));
        assertThrows(AssertionFailedError.class, () -> row.agrees(10));
        assertThrows(AssertionFailedError.class, () -> row.agrees(Double.NaN, 20));
    }

    @Test
    void aCaseWithoutACheckFails() {
        CaseFile file = CaseFile.read("heat.csv");
        var guard = file.tests(Map.of("S3", row -> {})).findFirst().orElseThrow();
        assertThrows(AssertionFailedError.class, () -> guard.getExecutable().execute());
    }
}
