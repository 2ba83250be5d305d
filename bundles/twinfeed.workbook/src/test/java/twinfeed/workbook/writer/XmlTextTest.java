// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.writer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import twinfeed.document.Palette;

class XmlTextTest {
    @Test
    void marksAndEscapesAreEscaped() {
        assertEquals("a&lt;b&gt;&amp;c", XmlText.of("a<b>&c"));
        assertEquals("_x005F_x0041_", XmlText.of("_x0041_"));
        assertEquals("_x004_", XmlText.of("_x004_"));
        assertEquals("_x0007_", XmlText.of("\u0007"));
        assertEquals("😀", XmlText.of("😀"));
        assertEquals("_xD83D_", XmlText.of("\uD83D"));
    }

    /** Whatever somebody types comes back from the file as it was, but for carriage returns before a line's end. */
    @Property(tries = 60)
    void everyTextComesBack(@ForAll String text) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (WorkbookWriter book = new WorkbookWriter(new Palette(0), Locale.UK, true)) {
            book.page("Sheet").columns(30).row().text(0, text, CellStyle.BODY);
            book.describe("t", "", "", "test", Instant.EPOCH);
            book.write(out);
        }
        try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            assertEquals(
                    text.replace("\r\n", "\n"),
                    read.getSheetAt(0).getRow(0).getCell(0).getStringCellValue());
        }
    }
}
