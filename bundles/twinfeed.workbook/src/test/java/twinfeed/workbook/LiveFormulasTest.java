// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.document.QuoteDocument;
import twinfeed.model.quote.QuoteOption;

/** What a spreadsheet program makes of the formulas; the judge is LibreOffice, told to recalculate everything. */
class LiveFormulasTest {
    @TempDir
    Path folder = Path.of("unset");

    @BeforeEach
    void judge() {
        Office.assumePresent();
    }

    /** Every value beside a formula is poisoned, and every one must come out as it was written. */
    @Test
    void everyFormulaGivesTheValueBesideIt() throws Exception {
        QuoteDocument byLine = SampleQuote.document();
        awkwardLines(byLine.quote().getOptions().get(0), true);
        QuoteDocument byRate = SampleQuote.document();
        byRate.quote().setRounding("total-by-rate");
        for (QuoteOption option : byRate.quote().getOptions()) {
            awkwardLines(option, false);
        }
        Map<String, byte[]> books = new LinkedHashMap<>();
        books.put("line.xlsx", QuoteWorkbookTest.written(byLine));
        books.put("rate.xlsx", QuoteWorkbookTest.written(byRate));
        Recalculation.judge(folder, books).forEach((name, outcome) -> {
            assertEquals(List.of(), outcome.differences(), name);
            assertTrue(outcome.formulas() > 800, name + ": " + outcome.formulas());
        });
    }

    /** Prices and quantities whose products lie on, just under and just over half a penny. */
    private static void awkwardLines(QuoteOption option, boolean byLine) {
        Random random = new Random(20261125);
        var lines = option.getSections().get(1).getLines();
        for (String[] pair :
                new String[][] {{"1", "2.675"}, {"1", "1.005"}, {"3", "0.335"}, {"0.5", "0.01"}, {"-1", "2.675"}}) {
            lines.add(SampleQuote.line("awkward", "Awkward", pair[0], "each", pair[1], new BigDecimal("0.2")));
        }
        for (int at = 0; at < 300; at++) {
            String quantity = BigDecimal.valueOf(random.nextInt(100_000), 3).toPlainString();
            String price = BigDecimal.valueOf(random.nextInt(1_000_000), 3).toPlainString();
            lines.add(SampleQuote.line(
                    "random",
                    "Random " + at,
                    quantity,
                    "m",
                    price,
                    at % 2 == 0 ? new BigDecimal("0.175") : new BigDecimal("0.05")));
        }
        if (!byLine) {
            option.getSections().forEach(section -> section.getLines().forEach(line -> line.setTax(null)));
        }
        sum(option, byLine);
    }

    private static void sum(QuoteOption option, boolean byLine) {
        SampleQuote.sum(option);
        if (!byLine) {
            java.util.Map<BigDecimal, BigDecimal> nets = new java.util.TreeMap<>();
            option.getSections().forEach(section -> section.getLines().stream()
                    .filter(line -> line.getNet() != null && line.getTaxRate() != null)
                    .forEach(line ->
                            nets.merge(line.getTaxRate().stripTrailingZeros(), line.getNet(), BigDecimal::add)));
            BigDecimal tax = BigDecimal.ZERO.setScale(2);
            for (var entry : nets.entrySet()) {
                tax = tax.add(entry.getKey().multiply(entry.getValue()).setScale(2, java.math.RoundingMode.HALF_UP));
            }
            option.setTax(tax);
            option.setTotal(option.getNet().add(tax));
        }
    }

    /** Change a length, and the voltage drop and everything after it follow to what the program gives for that length. */
    @Test
    void aChangedInputIsFollowed() throws Exception {
        byte[] written = QuoteWorkbookTest.written(SampleQuote.document());
        Path file = folder.resolve("changed.xlsx");
        try (XSSFWorkbook book = book(written);
                var out = Files.newOutputStream(file)) {
            cell(book, "v_0_circuit_voltageDrop_L").setCellValue(42.5);
            book.write(out);
        }
        Office.convert(folder, "xlsx", file);
        try (XSSFWorkbook after = book(Files.readAllBytes(folder.resolve("out/changed.xlsx")))) {
            double expected = 7.3 * (9500.0 / 230) * 42.5 / 1000;
            for (String sheet : List.of("Workings", "Checks")) {
                assertTrue(hasFormulaValue(after.getSheet(sheet), expected), "the drop follows: " + sheet);
                assertTrue(hasFormulaValue(after.getSheet(sheet), 11.5 - expected), "the margin follows: " + sheet);
                assertTrue(hasFormulaText(after.getSheet(sheet), "✗ fails"), "the answer follows: " + sheet);
            }
        }
    }

    private static boolean hasFormulaText(Sheet sheet, String text) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.FORMULA
                        && cell.getCachedFormulaResultType() == CellType.STRING
                        && cell.getStringCellValue().equals(text)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean hasFormulaValue(Sheet sheet, double value) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.FORMULA
                        && cell.getCachedFormulaResultType() == CellType.NUMERIC
                        && Math.abs(cell.getNumericCellValue() - value) < 1e-9) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Cell cell(XSSFWorkbook book, String name) {
        Name found = book.getName(name);
        CellReference place = new CellReference(found.getRefersToFormula());
        return book.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
    }

    private static XSSFWorkbook book(byte[] bytes) throws Exception {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }
}
