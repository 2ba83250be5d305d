// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes a workbook with as many sheets and cells of each kind as asked for, in the simplest way that POI offers. It reads, computes
 * and formats nothing: what this takes is the least that a Java program with POI takes for a workbook of that size.
 */
public final class PlainWorkbook {
    private static final int COLUMNS = 8;

    private PlainWorkbook() {}

    /**
     * Writes it.
     *
     * @param arguments the file, then for each sheet its counts as {@link WorkbookSize} prints them
     * @throws IOException if it cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        List<WorkbookSize> sizes =
                Arrays.stream(arguments).skip(1).map(WorkbookSize::parse).toList();
        write(Path.of(arguments[0]), sizes);
    }

    static void write(Path file, List<WorkbookSize> sizes) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            for (int i = 0; i < sizes.size(); i++) {
                fill(workbook.createSheet("Sheet " + (i + 1)), sizes.get(i));
            }
            workbook.write(out);
        }
    }

    private static void fill(Sheet sheet, WorkbookSize size) {
        List<Cell> cells = new ArrayList<>(size.cells());
        for (int i = 0; i < size.cells(); i++) {
            int number = i / COLUMNS;
            Row row = i % COLUMNS == 0 ? sheet.createRow(number) : sheet.getRow(number);
            cells.add(row.createCell(i % COLUMNS));
        }
        int next = 0;
        for (int i = 0; i < size.texts(); i++) {
            cells.get(next++).setCellValue("text " + i);
        }
        for (int i = 0; i < size.numbers(); i++) {
            cells.get(next++).setCellValue(i * 1.25);
        }
        for (int i = 0; i < size.formulas(); i++) {
            cells.get(next++).setCellFormula("SUM(1," + i + ")");
        }
    }
}
