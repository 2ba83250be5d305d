// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import twinfeed.workbook.batch.ResultWorkbook;

class BatchTableTest {
    /** No spreadsheet program has more than 2^20 rows a sheet. */
    @Test
    void aFullSheetGoesOnInAFurtherOne() throws IOException {
        List<Refused> refused = IntStream.rangeClosed(2, 6)
                .mapToObj(row -> new Refused(row, "Rowan Lane " + row, "no reading"))
                .toList();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DwellingOrder order = new DwellingOrder(new DwellingSheets(Locale.ROOT, List::of), dwelling -> -1);
                ResultWorkbook book = new ResultWorkbook("Batch", "", "0.1.0", 0, Locale.ROOT, Instant.EPOCH)) {
            new BatchTable(book, "GBP", Locale.ROOT, 2)
                    .write("a.job", new BatchTotals(Locale.ROOT), order, List.of(), refused);
            book.write(bytes);
        }
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()))) {
            for (int sheet = 1; sheet <= 3; sheet++) {
                Sheet page = book.getSheet(sheet == 1 ? "Set aside" : "Set aside " + sheet);
                assertEquals(2 * sheet, page.getRow(2).getCell(0).getNumericCellValue());
                assertEquals(sheet == 3 ? 2 : 3, page.getLastRowNum());
            }
        }
    }
}
