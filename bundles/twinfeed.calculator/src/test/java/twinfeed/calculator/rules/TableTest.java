// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TableTest {
    private static Table read(String text) {
        return Table.read("pipes", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static String refusal(String text) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, () -> read(text)).getMessage());
    }

    @Test
    void theHeadIsReadApartFromTheRows() {
        Table table = read(
                """
                # source:  a made-up list
                #status: not verified
                # units: bore mm

                # the usual ones
                name,bore
                copper,13.6
                plastic
                """);
        assertEquals("pipes", table.name());
        assertEquals("a made-up list", table.source());
        assertEquals("not verified", table.status());
        assertEquals("bore mm", table.units());
        assertEquals(List.of(Map.of("name", "copper", "bore", "13.6"), Map.of("name", "plastic")), table.rows());
    }

    @Test
    void aRowIsNotTakenForTheHead() {
        assertEquals(
                "table pipes has no head line \"# units:\"",
                refusal("# source: a\n# status: b\nname,bore\n\"units: mm\",13.6\n"));
    }

    @Test
    void aTextThatIsNoTableIsRefused() {
        String said = refusal("# source: a\n# status: b\n# units: mm\nname,bore\n\"copper,13.6\n");
        assertEquals("table pipes", said.substring(0, 11));
    }

    @Test
    void aNumberThatIsNotThereIsSaid() {
        assertEquals(13.6, Table.number(Map.of("bore", "13.6"), "bore"));
        for (Map<String, String> row : List.of(Map.of("bore", ""), Map.of("wall", "0.7"))) {
            String said = String.valueOf(assertThrows(IllegalArgumentException.class, () -> Table.number(row, "bore"))
                    .getMessage());
            assertEquals("no bore in " + row, said);
        }
    }
}
