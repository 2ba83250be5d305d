// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import twinfeed.workbook.batch.ResultWorkbook;

class BatchTableTest {
    /** What is told on the screen ends; what is written into the workbook does not. */
    @Test
    void manyRefusalsAreCountedAndKeptOutsideTheMemory() throws IOException {
        try (RejectedRows refused = new RejectedRows()) {
            int many = RejectedRows.MOST_AT_HAND + 5;
            for (int row = 1; row <= many; row++) {
                refused.add(new Refused(row, "Sedge Row " + row, "no reading"));
            }
            assertEquals(many, refused.count());
            assertEquals(RejectedRows.MOST_AT_HAND, refused.first().size());
            List<Refused> all = new ArrayList<>();
            refused.each(all::add);
            assertEquals(many, all.size());
            assertEquals(new Refused(many, "Sedge Row " + many, "no reading"), all.get(many - 1));
        }
    }

    /** No spreadsheet program has more than 2^20 rows a sheet. */
    @Test
    void aFullSheetGoesOnInAFurtherOne() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (RejectedRows refused = new RejectedRows();
                DwellingOrder order = new DwellingOrder();
                ResultWorkbook book = new ResultWorkbook("Batch", "", "0.1.0", 0, Locale.ROOT, Instant.EPOCH)) {
            IntStream.rangeClosed(2, 6)
                    .forEach(row -> refused.add(new Refused(row, "Rowan Lane " + row, "no reading")));
            new BatchTable(book, "GBP", Locale.ROOT, 2)
                    .write("a.job", new BatchTotals(Locale.ROOT), order, List.of(), refused);
            book.write(bytes);
        }
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()))) {
            for (int sheet = 1; sheet <= 3; sheet++) {
                Sheet page = book.getSheet(sheet == 1 ? "Rejected" : "Rejected " + sheet);
                assertEquals(2 * sheet, page.getRow(2).getCell(0).getNumericCellValue());
                assertEquals(sheet == 3 ? 2 : 3, page.getLastRowNum());
            }
        }
    }
}
