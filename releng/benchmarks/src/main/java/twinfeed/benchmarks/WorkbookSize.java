// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * How many cells of each kind a sheet has.
 *
 * @param texts cells with text
 * @param numbers cells with a number, a date or a truth value
 * @param formulas cells with a formula
 * @param blanks cells with a look and no content
 */
public record WorkbookSize(int texts, int numbers, int formulas, int blanks) {
    /**
     * Counts the sheets of a workbook.
     *
     * @throws IOException if it cannot be read
     */
    public static List<WorkbookSize> of(Path file) throws IOException {
        List<WorkbookSize> sizes = new ArrayList<>();
        try (OPCPackage container = OPCPackage.open(file.toFile(), PackageAccess.READ);
                XSSFWorkbook workbook = new XSSFWorkbook(container)) {
            for (Sheet sheet : workbook) {
                sizes.add(of(sheet));
            }
        } catch (InvalidFormatException broken) {
            throw new IOException(file + ": " + broken.getMessage(), broken);
        }
        return sizes;
    }

    private static WorkbookSize of(Sheet sheet) {
        int[] counts = new int[4];
        for (Row row : sheet) {
            for (Cell cell : row) {
                counts[kind(cell)]++;
            }
        }
        return new WorkbookSize(counts[0], counts[1], counts[2], counts[3]);
    }

    private static int kind(Cell cell) {
        return switch (cell.getCellType()) {
            case STRING -> 0;
            case FORMULA -> 2;
            case BLANK -> 3;
            default -> 1;
        };
    }

    /** All cells. */
    public int cells() {
        return texts + numbers + formulas + blanks;
    }

    /**
     * Prints the sizes of a workbook as {@link PlainWorkbook} takes them.
     *
     * @param arguments the workbook
     * @throws IOException if it cannot be read
     */
    public static void main(String[] arguments) throws IOException {
        StringBuilder line = new StringBuilder();
        for (WorkbookSize size : of(Path.of(arguments[0]))) {
            line.append(line.isEmpty() ? "" : " ")
                    .append(size.texts)
                    .append(',')
                    .append(size.numbers)
                    .append(',')
                    .append(size.formulas)
                    .append(',')
                    .append(size.blanks);
        }
        System.out.println(line);
    }

    /** Reads what {@link #main} prints for one sheet. */
    static WorkbookSize parse(String text) {
        String[] counts = text.split(",", 4);
        return new WorkbookSize(
                Integer.parseInt(counts[0]),
                Integer.parseInt(counts[1]),
                Integer.parseInt(counts[2]),
                Integer.parseInt(counts[3]));
    }
}
