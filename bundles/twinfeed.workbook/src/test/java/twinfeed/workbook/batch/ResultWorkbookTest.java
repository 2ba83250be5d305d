// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import twinfeed.document.Firm;
import twinfeed.model.assessment.Verdict;
import twinfeed.workbook.batch.ResultWorkbook.Column;
import twinfeed.workbook.batch.ResultWorkbook.Kind;

class ResultWorkbookTest {
    private static final List<Column> COLUMNS = List.of(
            new Column("Dwelling", Kind.TEXT, 24),
            new Column("Verdict", Kind.VERDICT, 18),
            new Column("Total", Kind.MONEY, 12),
            new Column("Inspected", Kind.DATE, 14),
            new Column("Chance", Kind.SHARE, 10));

    private static byte[] written(int rows) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ResultWorkbook book = new ResultWorkbook(
                "Batch", "Office", "0.1.0", Firm.DEFAULT_ACCENT, Locale.UK, Instant.parse("2026-11-25T00:00:00Z"))) {
            book.table("Dwellings", "One row a dwelling", "GBP", COLUMNS);
            for (int row = 0; row < rows; row++) {
                book.row(Arrays.asList(
                        row == 0 ? "=1+2" : "Rowan Lane " + row,
                        Verdict.get(1 + row % 4),
                        new BigDecimal("367.14"),
                        row == 1 ? null : LocalDate.of(2022, 5, 3),
                        0.95));
            }
            book.write(out);
        }
        return out.toByteArray();
    }

    @Test
    void cellsAreTyped() throws Exception {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written(3)))) {
            XSSFSheet sheet = book.getSheet("Dwellings");
            Row row = sheet.getRow(2);
            assertEquals("=1+2", row.getCell(0).getStringCellValue());
            assertEquals("✓ suits", row.getCell(1).getStringCellValue());
            assertEquals(367.14, row.getCell(2).getNumericCellValue());
            assertEquals("\"£\"#,##0.00_)", row.getCell(2).getCellStyle().getDataFormatString());
            assertEquals(
                    LocalDate.of(2022, 5, 3),
                    row.getCell(3).getLocalDateTimeCellValue().toLocalDate());
            assertEquals("", sheet.getRow(3).getCell(3).toString());
        }
    }

    @Test
    void sameRowsGiveTheSameBytesAndNoFileStays() throws Exception {
        Path folder = Path.of(System.getProperty("java.io.tmpdir"));
        long before = leftovers(folder);
        assertArrayEquals(written(500), written(500));
        assertEquals(before, leftovers(folder));
    }

    private static long leftovers(Path folder) throws Exception {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith("twinfeed-rows"))
                    .count();
        }
    }

    @Test
    void aRowThatDoesNotFitIsRefused() throws Exception {
        try (ResultWorkbook book = new ResultWorkbook("Batch", "", "0.1.0", 0, Locale.UK, Instant.EPOCH)) {
            assertThrows(IllegalStateException.class, () -> book.row(List.of("x")));
            book.table("T", "", null, COLUMNS);
            assertThrows(IllegalArgumentException.class, () -> book.row(List.of("x")));
            assertThrows(
                    IllegalArgumentException.class,
                    () -> book.row(Arrays.asList("x", "suits", BigDecimal.ONE, null, null)));
        }
    }
}
