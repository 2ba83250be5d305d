// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Column;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Section;
import twinfeed.document.JobSheet.Table;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.QuoteLetter.Said;

class JobSheetWorkbookTest {
    private static JobSheet sheet(int columns, String text) {
        List<Column> heads = new ArrayList<>();
        List<String> row = new ArrayList<>();
        for (int at = 0; at < columns; at++) {
            heads.add(new Column("Head " + at, Kind.values()[at % Kind.values().length], 1 + at * at));
            row.add(at % Kind.values().length == Kind.TICK.ordinal() ? JobSheet.DONE : text + at);
        }
        return new JobSheet(
                "Job sheet",
                "rowan",
                List.of(new Said("Customer", text), new Said("Unit", "Heater")),
                new Said("Most likely", "The elements"),
                List.of(
                        new Section("Caution", Tone.CAUTION, List.of("Prove dead first"), null),
                        new Section("Next", Tone.NEXT, List.of("Ask"), null),
                        new Section("Table", Tone.PLAIN, List.of(), new Table(heads, List.of(row))),
                        new Section("Source", Tone.SMALL, List.of("Judgement"), null)),
                List.of("Technician", "Date"),
                Firm.of("Brook & Alder", "", "0000"),
                "0.1.0",
                Locale.UK,
                Instant.parse("2026-11-25T00:00:00Z"));
    }

    private static byte[] written(JobSheet sheet) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        JobSheetWorkbook.write(sheet, out);
        return out.toByteArray();
    }

    private static List<String> texts(byte[] bytes) throws IOException {
        List<String> texts = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            XSSFSheet only = book.getSheetAt(0);
            assertEquals(1, book.getNumberOfSheets());
            only.forEach(row -> row.forEach(cell -> {
                if (cell.getCellType() == CellType.STRING) {
                    texts.add(cell.getStringCellValue());
                }
            }));
        }
        return texts;
    }

    @Test
    void itSaysAllOfIt() throws IOException {
        List<String> texts = texts(written(sheet(6, "=1+1 text ")));
        assertTrue(
                texts.containsAll(List.of(
                        "Job sheet: rowan",
                        "=1+1 text ",
                        "The elements",
                        "Prove dead first",
                        "Ask",
                        "Head 5",
                        "=1+1 text 0",
                        "=1+1 text 5",
                        "☑",
                        "Judgement",
                        "Technician",
                        "Date")),
                texts.toString());
    }

    @Test
    void aTableOfManyColumnsKeepsAllOfThem() throws IOException {
        List<String> texts = texts(written(sheet(12, "x")));
        for (int at = 0; at < 12; at++) {
            assertTrue(texts.contains("Head " + at), texts.toString());
        }
    }

    @Test
    void sameSheetGivesTheSameBytes() throws IOException {
        assertArrayEquals(written(sheet(5, "a")), written(sheet(5, "a")));
    }

    /** A heading at the foot of a page has lost what it is the heading of. */
    @Test
    void noPageEndsWithAHeading() throws IOException {
        for (int rows = 1; rows < 60; rows++) {
            try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written(longSheet(rows))))) {
                XSSFSheet page = book.getSheetAt(0);
                assertTrue(page.getRowBreaks().length > 0, rows + " rows");
                for (int last : page.getRowBreaks()) {
                    assertTrue(text(page, last).startsWith("row"), "ends with " + text(page, last));
                }
            }
        }
    }

    private static JobSheet longSheet(int rows) {
        List<Section> sections = new ArrayList<>();
        for (int at = 0; at < 4; at++) {
            List<List<String>> lines = new ArrayList<>();
            for (int line = 0; line < rows + 15; line++) {
                lines.add(List.of("row " + line, "b"));
            }
            Table table = new Table(List.of(new Column("Head", Kind.TEXT, 1), new Column("", Kind.BOX, 1)), lines);
            sections.add(new Section("Heading " + at, Tone.PLAIN, List.of(), table));
        }
        JobSheet one = sheet(2, "x");
        return new JobSheet(
                one.title(),
                one.reference(),
                one.facts(),
                one.conclusion(),
                sections,
                one.fields(),
                one.firm(),
                one.programVersion(),
                one.locale(),
                one.time());
    }

    private static String text(XSSFSheet page, int row) {
        return page.getRow(row) == null || page.getRow(row).getCell(0) == null
                ? ""
                : page.getRow(row).getCell(0).getStringCellValue();
    }
}
