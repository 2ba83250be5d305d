// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class QuoteWorkbookTest {
    /** Texts that a spreadsheet would run as formulas, as in OWASP's page on CSV injection. */
    private static final List<String> INJECTIONS =
            List.of("=1+2", "+1+2", "-1+2", "@SUM(A1)", "=HYPERLINK(\"http://example.org\",\"x\")", "\t=1+2", "'=1+2");

    static byte[] written(QuoteDocument document) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        QuoteWorkbook.write(document, out);
        return out.toByteArray();
    }

    @Test
    void sameDocumentGivesTheSameBytes() throws Exception {
        assertArrayEquals(written(SampleQuote.document()), written(SampleQuote.document()));
    }

    @Test
    void typedTextStaysText() throws Exception {
        for (String text : INJECTIONS) {
            QuoteDocument document = SampleQuote.document();
            document.survey().getSite().setName(text);
            document.survey().setNotes(text);
            document.quote().setSummary(text);
            document.quote()
                    .getOptions()
                    .get(0)
                    .getSections()
                    .get(0)
                    .getLines()
                    .get(0)
                    .setDescription(text);
            try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written(document)))) {
                assertEquals(1, count(book.getSheet("Items"), text), text);
                assertEquals(2, count(book.getSheet("Survey"), text), text);
                assertEquals(1, count(book.getSheet("Quote"), text), text);
            }
        }
    }

    private static int count(XSSFSheet sheet, String text) {
        int count = 0;
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().equals(text)) {
                    count++;
                }
            }
        }
        return count;
    }

    @Test
    void aTotalThatIsNotTheSumOfItsLinesIsRefused() throws Exception {
        QuoteDocument document = SampleQuote.document();
        document.quote().getOptions().get(1).setTotal(new BigDecimal("623.58"));
        WorkbookException refused = assertThrows(WorkbookException.class, () -> written(document));
        assertTrue(
                refused.getMessage().contains("total is 623.58, but the printed figures give 623.57"),
                refused.getMessage());
    }
}
