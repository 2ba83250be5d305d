// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.rows.Row;
import twinfeed.workbook.text.WorkbookException;

class PriceBookSheetTest {
    @TempDir
    Path folder = Path.of("unset");

    private Path book(Consumer<XSSFSheet> content) throws Exception {
        Path file = folder.resolve("prices.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            content.accept(book.createSheet("Prices"));
            book.write(out);
        }
        return file;
    }

    /** A book made of these parts, as a hand that means harm would make it. */
    private Path parts(String sheet, Map<String, String> more) throws Exception {
        Path file = folder.resolve("made.xlsx");
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put(
                "[Content_Types].xml",
                """
                <?xml version="1.0" encoding="UTF-8" standalone="yes"?>
                <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
                <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
                <Default Extension="xml" ContentType="application/xml"/>
                <Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>
                <Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>
                <Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/>
                </Types>""");
        parts.put("_rels/.rels", relationships("officeDocument", "xl/workbook.xml"));
        parts.put(
                "xl/workbook.xml",
                """
                <workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">
                <sheets><sheet name="Prices" sheetId="1" r:id="rId1"/></sheets></workbook>""");
        parts.put("xl/_rels/workbook.xml.rels", relationships("worksheet", "worksheets/sheet1.xml"));
        parts.put("xl/styles.xml", "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"/>");
        parts.put("xl/worksheets/sheet1.xml", sheet);
        parts.putAll(more);
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return file;
    }

    private static String relationships(String type, String target) {
        return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/"
                + type + "\" Target=\"" + target + "\"/></Relationships>";
    }

    private static String sheet(String rows) {
        return "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>" + rows
                + "</sheetData></worksheet>";
    }

    private static String refusal(Path file) {
        return assertThrows(WorkbookException.class, () -> PriceBookSheet.read(file))
                .getMessage();
    }

    @Test
    void rowsComeAsTextWithTheirNumbers() throws Exception {
        Path file = book(sheet -> {
            CellStyle day = sheet.getWorkbook().createCellStyle();
            day.setDataFormat(sheet.getWorkbook().createDataFormat().getFormat("d mmm yyyy"));
            var first = sheet.createRow(0);
            first.createCell(0).setCellValue("# title: Demo");
            var third = sheet.createRow(2);
            third.createCell(0).setCellValue("cable-10");
            third.createCell(2).setCellValue(0.1 + 0.2 - 0.1);
            third.createCell(3).setCellValue(6.155);
            third.createCell(4).setCellValue(1_250_000);
            third.createCell(5).setCellValue(LocalDate.of(2026, 9, 1));
            third.getCell(5).setCellStyle(day);
            third.createCell(6).setCellFormula("2*3.25");
            third.getCell(6).setCellValue(6.5);
            third.createCell(7).setCellValue(true);
            third.createCell(8).setCellValue("12,50");
            third.createCell(9).setBlank();
        });
        assertEquals(
                List.of(
                        new Row(1, List.of("# title: Demo")),
                        new Row(
                                3,
                                List.of(
                                        "cable-10",
                                        "",
                                        "0.20000000000000004",
                                        "6.155",
                                        "1250000",
                                        "2026-09-01",
                                        "6.5",
                                        "true",
                                        "12,50"))),
                PriceBookSheet.read(file));
    }

    @Test
    void daysFrom1904AreTheSameDays() throws Exception {
        Path file = parts(
                sheet("<row r=\"1\"><c r=\"A1\" s=\"1\"><v>1</v></c></row>"),
                Map.of(
                        "xl/workbook.xml",
                        "<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><workbookPr date1904=\"1\"/><sheets><sheet name=\"P\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>",
                        "xl/_rels/workbook.xml.rels",
                        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"worksheets/sheet1.xml\"/><Relationship Id=\"rId2\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles\" Target=\"styles.xml\"/></Relationships>",
                        "xl/styles.xml",
                        "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><fonts count=\"1\"><font/></fonts><fills count=\"1\"><fill/></fills><borders count=\"1\"><border/></borders><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>"));
        // ECMA-376 part 1, 18.17.4.1: in the 1904 system the day of serial number 1 is 2 January 1904.
        assertEquals("1904-01-02", PriceBookSheet.read(file).get(0).cells().get(0));
    }

    @Test
    void mergedCellsAreRefused() throws Exception {
        Path file = book(sheet -> {
            sheet.createRow(0).createCell(0).setCellValue("code");
            sheet.addMergedRegion(new CellRangeAddress(0, 1, 1, 2));
        });
        assertEquals(
                "prices.xlsx: cells B1:C2 are merged; a list has one value a cell, so unmerge them", refusal(file));
    }

    @Test
    void aFormulaWithoutValueIsRefused() throws Exception {
        String refused = refusal(parts(sheet("<row r=\"7\"><c r=\"C7\"><f>1+1</f></c></row>"), Map.of()));
        assertTrue(refused.startsWith("made.xlsx: the formula at C7 has no value"), refused);
    }

    @Test
    void anErrorIsRefused() throws Exception {
        String refused = refusal(parts(sheet("<row r=\"7\"><c r=\"C7\" t=\"e\"><v>#REF!</v></c></row>"), Map.of()));
        assertTrue(refused.startsWith("made.xlsx: the formula at C7 gives an error"), refused);
    }

    @Test
    void anExternalEntityIsNotFetched() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
        String entity = "<!DOCTYPE worksheet [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]>";
        String sheet = entity + sheet("<row r=\"1\"><c r=\"A1\" t=\"str\"><v>&x;</v></c></row>");
        assertTrue(refusal(parts(sheet, Map.of())).contains("declares what it must not"));
    }

    @Test
    void growingEntitiesAreRefused() throws Exception {
        String bomb = "<!DOCTYPE worksheet [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]>";
        String sheet = bomb + sheet("<row r=\"1\"><c r=\"A1\" t=\"str\"><v>&b;</v></c></row>");
        assertTrue(refusal(parts(sheet, Map.of())).contains("declares what it must not"));
    }

    @Test
    @Timeout(120)
    void aBookThatUnpacksOutOfProportionIsRefused() throws Exception {
        Path file = folder.resolve("bomb.xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
            zip.putNextEntry(new ZipEntry("xl/sharedStrings.xml"));
            byte[] zeros = new byte[1 << 20];
            for (int at = 0; at < 80; at++) {
                zip.write(zeros);
            }
        }
        assertTrue(Files.size(file) < 100_000);
        assertTrue(refusal(file).startsWith("bomb.xlsx: it unpacks to more than 256 MiB"));
    }

    /** Twice as many rows as any spreadsheet program has: refused at the limit, before memory fills. */
    @Test
    @Timeout(120)
    void twoMillionRowsAreRefused() throws Exception {
        StringBuilder rows = new StringBuilder(90 << 20);
        for (int row = 1; row <= 2_000_000; row++) {
            rows.append("<row r=\"")
                    .append(row)
                    .append("\"><c r=\"A")
                    .append(row)
                    .append("\"><v>1</v></c></row>");
        }
        String refused = refusal(parts(sheet(rows.toString()), Map.of()));
        assertEquals("made.xlsx: more than 50000 rows; delete what lies below the list, or split it", refused);
    }

    @Test
    void aColumnFarOutIsRefused() throws Exception {
        String refused = refusal(parts(sheet("<row r=\"2\"><c r=\"XFD2\"><v>1</v></c></row>"), Map.of()));
        assertTrue(refused.startsWith("made.xlsx: something stands at XFD2, beyond 200 columns"), refused);
    }

    @Test
    void whatIsNoWorkbookIsCalledSo() throws Exception {
        Path csv = Files.writeString(folder.resolve("list.xlsx"), "code,description\n");
        assertTrue(refusal(csv).startsWith("list.xlsx: no workbook"));
        Path old =
                Files.write(folder.resolve("old.xls"), new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0});
        assertTrue(refusal(old).startsWith("old.xls: an older .xls workbook"));
        byte[] whole = Files.readAllBytes(
                book(sheet -> sheet.createRow(0).createCell(0).setCellValue("code")));
        Path half = Files.write(folder.resolve("half.xlsx"), java.util.Arrays.copyOf(whole, whole.length / 2));
        assertTrue(refusal(half).startsWith("half.xlsx: the workbook is damaged"));
    }

    @Test
    void aDamagedNumberIsRefusedWithItsCell() throws Exception {
        String refused = refusal(parts(sheet("<row r=\"2\"><c r=\"B2\"><v>12..5</v></c></row>"), Map.of()));
        assertEquals("made.xlsx: the cell B2 is damaged; write its value anew", refused);
    }
}
