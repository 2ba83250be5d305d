// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchVerbTest {
    private static final Path JOB = Run.DEMO.resolve("alder-beck.job");
    private static final Path BOOK = Run.DEMO.resolve("prices.csv");

    @TempDir
    private Path folder;

    private Path out;

    @BeforeEach
    void out() {
        out = folder.resolve("result.xlsx");
    }

    private Run batch(Path list, Object... more) {
        List<Object> words =
                new java.util.ArrayList<>(List.of("batch", list, "--like", JOB, "--book", BOOK, "--out", out));
        words.addAll(List.of(more));
        return Run.of(words.toArray());
    }

    private Path list(String... lines) throws IOException {
        return Files.writeString(folder.resolve("list.csv"), String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
    }

    private static List<String> head(Sheet sheet) {
        Row row = sheet.getRow(1);
        return IntStream.range(0, row.getLastCellNum())
                .mapToObj(at -> row.getCell(at).getStringCellValue())
                .toList();
    }

    private XSSFWorkbook result() throws IOException {
        try (InputStream in = Files.newInputStream(out)) {
            return new XSSFWorkbook(in);
        }
    }

    private static Cell cell(Sheet sheet, int row, String head) {
        return sheet.getRow(row).getCell(head(sheet).indexOf(head));
    }

    @Test
    void theDemonstrationListIsJudgedPricedAndSifted() throws IOException {
        Run run = batch(Run.DEMO.resolve("dwellings.csv"));
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("Dwellings judged: 6") && run.out().contains("Rows set aside: 2"), run.out());
        assertTrue(run.out().contains("Caution"), run.out());
        assertTrue(run.err().contains("Alder Beck 8: water.test.flow \"12 kW\""), run.err());
        try (XSSFWorkbook book = result()) {
            Sheet dwellings = book.getSheet("Dwellings");
            assertEquals("Alder Beck 1", cell(dwellings, 2, "Dwelling").getStringCellValue());
            assertEquals(7, dwellings.getLastRowNum());
            assertTrue(cell(dwellings, 2, "Which first").getStringCellValue().matches("[1-4] .+"));
            assertEquals(
                    "1 a safety check fails now",
                    cell(dwellings, 3, "Which first").getStringCellValue());
            Sheet refused = book.getSheet("Set aside");
            assertEquals(
                    List.of(8.0, 9.0),
                    List.of(
                            cell(refused, 2, "Row").getNumericCellValue(),
                            cell(refused, 3, "Row").getNumericCellValue()));
        }
    }

    /** A row that says nothing is the job itself: the same verdicts and, to the penny, the same price. */
    @Test
    void aDwellingNamedTwiceIsRejectedAndNamed() throws IOException {
        Run run = batch(list("dwelling,unit.age", "Alder Beck 1,9", "# a remark,", "Alder Beck 2,8", "alder beck 1,7"));
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("Dwellings judged: 2") && run.out().contains("Rows set aside: 1"), run.out());
        assertTrue(
                run.err().contains("line 5, alder beck 1: the list names this dwelling in line 2 already"), run.err());
    }

    @Test
    void theTemplatesInspectionIsNoDwellingsOwn() throws IOException {
        Run run = batch(list("dwelling,site.lastInspection", "Alder Beck 1,2024-05-06", "Alder Beck 2,"));
        assertEquals(0, run.status(), run.err());
        try (XSSFWorkbook book = result()) {
            Sheet sheet = book.getSheetAt(0);
            assertEquals(
                    java.time.LocalDate.of(2024, 5, 6),
                    cell(sheet, 2, "Last inspection")
                            .getLocalDateTimeCellValue()
                            .toLocalDate());
            assertEquals(
                    org.apache.poi.ss.usermodel.CellType.BLANK,
                    cell(sheet, 3, "Last inspection").getCellType());
            assertTrue(book.getSheetAt(0).getCTWorksheet().isSetAutoFilter(), "the results can be filtered");
        }
    }

    @Test
    void anEmptyRowIsTheJobItself() throws IOException {
        assertEquals(0, batch(list("dwelling,water.test.flow", "As surveyed,")).status());
        Path quote = folder.resolve("quote.xlsx");
        Run single = Run.of("quote", JOB, "--book", BOOK, "--out", quote, "--json");
        com.fasterxml.jackson.databind.JsonNode option = new com.fasterxml.jackson.databind.ObjectMapper()
                .readTree(single.out())
                .get("options")
                .get(0);
        try (XSSFWorkbook book = result()) {
            Sheet dwellings = book.getSheet("Dwellings");
            assertEquals(
                    option.get("title").asText(),
                    cell(dwellings, 2, "First offer").getStringCellValue());
            assertEquals(
                    option.get("total").asDouble(),
                    cell(dwellings, 2, "With tax").getNumericCellValue());
            assertEquals(option.get("net").asDouble(), cell(dwellings, 2, "Net").getNumericCellValue());
        }
    }

    @Test
    void aWorkbookIsReadAsTheSameListIsInCsv() throws IOException {
        Path sheet = folder.resolve("list.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream stream = Files.newOutputStream(sheet)) {
            Sheet page = book.createSheet();
            String[][] cells = {
                {"dwelling", "water.test.staticPressure", "unit.age"}, {"One", "3.4 bar", ""}, {"Two", "2.9 bar", "7"}
            };
            for (int row = 0; row < cells.length; row++) {
                Row line = page.createRow(row);
                for (int at = 0; at < cells[row].length; at++) {
                    if (row == 2 && at == 2) {
                        line.createCell(at).setCellValue(7);
                    } else {
                        line.createCell(at).setCellValue(cells[row][at]);
                    }
                }
            }
            book.write(stream);
        }
        assertEquals(0, batch(sheet, "--date", "2026-11-25").status());
        byte[] first = Files.readAllBytes(out);
        Path csv = list("dwelling,water.test.staticPressure,unit.age", "One,3.4 bar,", "Two,2.9 bar,7");
        Files.move(csv, folder.resolve("list.xlsx.csv"));
        assertEquals(0, batch(sheet, "--date", "2026-11-25").status());
        assertArrayEquals(first, Files.readAllBytes(out), "the same list gives the same bytes");
        try (XSSFWorkbook fromSheet = result()) {
            assertEquals(0, batch(folder.resolve("list.xlsx.csv")).status());
            try (XSSFWorkbook fromText = result()) {
                for (int row = 2; row <= 3; row++) {
                    for (String head :
                            List.of("Dwelling", "Present unit", "First offer", "Work included", "In words")) {
                        assertEquals(
                                cell(fromSheet.getSheetAt(0), row, head).toString(),
                                cell(fromText.getSheetAt(0), row, head).toString());
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "water.test.flow | 12 L/min | no column names the dwelling",
                "dwelling,water.hardnes | One,1 mg/L | did you mean hardness?",
                "dwelling,water.segments.length | One,1 m | say which one in square brackets",
                "dwelling |  | it names no dwelling",
                "dwelling | One,\"two | a double quote opens here and does not close",
            })
    void anUnusableListLeavesNothing(String head, String row, String wrong) throws IOException {
        Run run = batch(row == null ? list(head) : list(head, row));
        assertEquals(2, run.status(), run.out());
        assertTrue(run.err().contains(wrong) && run.err().contains("list.csv"), run.err());
        assertFalse(Files.exists(out));
    }

    @Test
    void refusesTextInNeitherEncoding() throws IOException {
        Path list = Files.write(
                folder.resolve("list.csv"),
                new byte[] {'d', 'w', 'e', 'l', 'l', 'i', 'n', 'g', '\n', (byte) 0x81, '\n'});
        Run run = batch(list);
        assertEquals(2, run.status(), run.err());
        assertTrue(run.err().contains("UTF-8"), run.err());
    }

    @Test
    void speaksGerman() throws IOException {
        assertEquals(0, batch(list("dwelling", "Haus 1"), "--language", "de").status());
        try (XSSFWorkbook book = result()) {
            Sheet dwellings = book.getSheet("Wohnungen");
            assertTrue(cell(dwellings, 2, "In Worten").getStringCellValue().contains("passt"));
        }
        Run unknown = batch(list("dwelling", "Haus 1"), "--language", "fr");
        assertEquals(2, unknown.status());
        assertTrue(unknown.err().contains("en, de"), unknown.err());
    }
}
