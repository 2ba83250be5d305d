// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.io.InputException;

class CsvRowsTest {
    @TempDir
    private Path folder;

    private static List<List<String>> rows(String text) {
        List<List<String>> rows = new ArrayList<>();
        CsvRows.read("list.csv", text, 100, row -> rows.add(row.cells()));
        return rows;
    }

    private List<List<String>> rows(byte[] content) throws IOException {
        Path file = Files.write(folder.resolve("list.csv"), content);
        List<List<String>> rows = new ArrayList<>();
        CsvRows.read(file, 100, 1, row -> rows.add(row.cells()));
        return rows;
    }

    private String refused(byte[] content) {
        return String.valueOf(
                assertThrows(InputException.class, () -> rows(content)).getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void tellsTheSeparator(String separator) {
        String text =
                "# a remark, with commas; and semicolons\na,b,c\n1,\"x;,y\",3\n".replaceAll(",(?=[bc3\"])", separator);
        assertEquals(List.of("1", "x;,y", "3"), rows(text).get(2));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3,1 bar|3.1 bar",
                "3,0 bar ± 0,1 bar|3.0 bar ± 0.1 bar",
                "3,0 bar ± 0,1|3.0 bar ± 0.1",
                "-0,5|-0.5",
                "12,5 %|12.5 %",
                "7,25 l/min|7.25 l/min",
                "1,234|1.234",
                "# labour-rate: 54,00|# labour-rate: 54.00",
                "1.250,00|1.250,00",
                "Flat 3,1 left|Flat 3,1 left",
                "a,b|a,b",
                "3.1 bar|3.1 bar"
            })
    void aListWithSemicolonsMayHaveADecimalComma(String written, String read) {
        assertEquals(read, rows("dwelling;x\n" + written + ";1\n").get(1).get(0));
    }

    @Test
    void aListWithCommasHasNoDecimalComma() {
        assertEquals(List.of("3,1 bar", "b"), rows("a,b\n\"3,1 bar\",b\n").get(1));
    }

    @Test
    void withTabsAThousandIsNotTakenForADecimal() {
        assertEquals(List.of("1,234", "1.5"), rows("a\tb\n1,234\t1,5\n").get(1));
    }

    @Test
    void utf8WithAndWithoutItsMarkAndWindows1252AreToldApart() throws IOException {
        String text = "name,b\nMüller’s,€\n";
        List<List<String>> expected = rows(text);
        assertEquals(expected, rows(text.getBytes(StandardCharsets.UTF_8)));
        assertEquals(expected, rows(("\ufeff" + text).getBytes(StandardCharsets.UTF_8)));
        assertEquals(expected, rows(text.getBytes(Charset.forName("windows-1252"))));
    }

    @Test
    void aBrokenLetterInUtf8IsRefusedWithItsLine() {
        byte[] content = "name,b\nMüller,1\nX,2\n".getBytes(StandardCharsets.UTF_8);
        content[content.length - 4] = (byte) 0xff;
        assertTrue(refused(content).contains("list.csv, line 3: a letter is not in UTF-8"), refused(content));
    }

    @Test
    void utf16IsRefusedByName() {
        assertTrue(refused("a,b\n1,2\n".getBytes(StandardCharsets.UTF_16)).contains("UTF-16"));
    }

    @Test
    void countsLinesAsTheFileShowsThem() {
        List<Integer> numbers = new ArrayList<>();
        CsvRows.read("l", "a,b\n\"two\nlines\",x\n\nc,d\n", 100, row -> numbers.add(row.number()));
        assertEquals(List.of(1, 2, 5), numbers);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a,\"b\nc,d\n", "a,\"b\"x\n"})
    void brokenQuotesAreRefusedWithTheirLine(String text) {
        assertTrue(refused(("h,i\n" + text).getBytes(StandardCharsets.UTF_8))
                .contains("list.csv, line 2: a double quote"));
    }

    @Test
    void boundsAreNamed() {
        assertTrue(refused("a\n".repeat(200).getBytes(StandardCharsets.UTF_8)).contains("more than 100 rows"));
        assertTrue(refused(new byte[2 << 20]).contains("larger than 1 MiB"));
        assertTrue(refused(",".repeat(600).getBytes(StandardCharsets.UTF_8)).contains("more than 500 cells"));
        assertTrue(refused("x".repeat(40_000).getBytes(StandardCharsets.UTF_8)).contains("more than 32767 letters"));
    }

    @Test
    void aDeviceIsNoList() {
        InputException refused =
                assertThrows(InputException.class, () -> CsvRows.read(Path.of("/dev/zero"), 100, 1, row -> {}));
        assertTrue(String.valueOf(refused.getMessage()).contains("no file"), refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+44 1632 960000", "-1", "@sum", "'=x", "''=x", "'plain", "plain", "", "'", "\tx"})
    void whatLooksLikeAFormulaIsWrittenAsTextAndReadBack(String text) {
        assertTrue(CsvCell.safe(text).isEmpty()
                || "=+-@\t\r".indexOf(CsvCell.safe(text).charAt(0)) < 0);
        assertEquals(text, CsvCell.plain(CsvCell.safe(text)));
    }
}
