// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Plain lists, by RFC 4180 and RFC 8259. */
final class ResultLinesTest {
    private static String written(ResultForm form, List<List<@Nullable Object>> lines) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ResultLines writer = ResultLines.of(form, bytes);
        for (List<@Nullable Object> line : lines) {
            writer.write(line);
        }
        writer.finish();
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private static List<@Nullable Object> line(int row, String name) {
        List<@Nullable Object> line = new ArrayList<>(Collections.nCopies(ResultLine.KEYS.size(), null));
        line.set(0, row);
        line.set(1, name);
        line.set(ResultLine.KEYS.indexOf("total"), new BigDecimal("1382.20"));
        line.set(ResultLine.KEYS.indexOf("reason"), "");
        return line;
    }

    @Test
    void aJsonLineHasNumbersAsNumbersAndNothingThatIsAbsent() throws IOException {
        assertEquals(
                "{\"row\":2,\"dwelling\":\"Mill \\\"Row\\\" 2\",\"total\":1382.20}\n"
                        + "{\"row\":3,\"dwelling\":\"Stra\u00dfe 3\",\"total\":1382.20}\n",
                written(ResultForm.JSON_LINES, List.of(line(2, "Mill \"Row\" 2"), line(3, "Stra\u00dfe 3"))));
    }

    @Test
    void aCsvHasAHeadEvenWithoutRows() throws IOException {
        assertEquals(String.join(",", ResultLine.KEYS) + "\n", written(ResultForm.CSV, List.of()));
        List<String> lines =
                written(ResultForm.CSV, List.of(line(2, "Mill Row, 2"))).lines().toList();
        assertEquals("2,\"Mill Row, 2\"" + ",".repeat(14) + "1382.20" + ",".repeat(7), lines.get(1));
    }

    @Test
    void theNameOfTheFileSaysTheForm() {
        assertEquals(ResultForm.CSV, ResultForm.of(Path.of("OUT.CSV")));
        assertEquals(ResultForm.JSON_LINES, ResultForm.of(Path.of("out.jsonl")));
        assertEquals(ResultForm.WORKBOOK, ResultForm.of(Path.of("out.xlsx")));
        assertEquals(ResultForm.WORKBOOK, ResultForm.of(Path.of("out.csv.old")));
        assertEquals(List.of(".xlsx", ".csv", ".jsonl"), ResultForm.endings());
        assertEquals(".csv", ResultForm.CSV.ending());
    }
}
