// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Poisons the value beside every formula of books, has LibreOffice recalculate them, and compares with the values that were written. */
public final class Recalculation {
    private static final double NEAR = 1e-9;

    /** LibreOffice takes the difference of two nearly equal numbers for 0, which only a residual notices. */
    private static final double ZERO = 1e-12;

    private Recalculation() {}

    /**
     * What came of one book.
     *
     * @param formulas number of formulas compared
     * @param differences those that came out otherwise
     */
    public record Outcome(int formulas, List<String> differences) {}

    /** Arguments: books to judge. */
    public static void main(String[] arguments) throws Exception {
        Map<String, byte[]> books = new LinkedHashMap<>();
        for (String argument : arguments) {
            books.put(String.valueOf(Path.of(argument).getFileName()), Files.readAllBytes(Path.of(argument)));
        }
        Path folder = Files.createTempDirectory("judge");
        judge(folder, books).forEach((name, outcome) -> {
            System.out.println(name + ": " + outcome.formulas() + " formulas, "
                    + outcome.differences().size() + " differ");
            outcome.differences().forEach(System.out::println);
        });
    }

    /**
     * Judges books.
     *
     * @param folder a folder for what LibreOffice reads and writes
     * @param books books by their file names
     */
    public static Map<String, Outcome> judge(Path folder, Map<String, byte[]> books) throws Exception {
        List<Path> files = new ArrayList<>();
        for (Map.Entry<String, byte[]> book : books.entrySet()) {
            files.add(Files.write(folder.resolve(book.getKey()), Poison.formulas(book.getValue())));
        }
        Office.convert(folder, "xlsx", files.toArray(new Path[0]));
        Map<String, Outcome> outcomes = new LinkedHashMap<>();
        for (Map.Entry<String, byte[]> book : books.entrySet()) {
            byte[] recalculated = Files.readAllBytes(folder.resolve("out").resolve(book.getKey()));
            try (XSSFWorkbook before = new XSSFWorkbook(new ByteArrayInputStream(book.getValue()));
                    XSSFWorkbook after = new XSSFWorkbook(new ByteArrayInputStream(recalculated))) {
                outcomes.put(book.getKey(), compare(before, after));
            }
        }
        return outcomes;
    }

    private static Outcome compare(XSSFWorkbook before, XSSFWorkbook after) {
        int formulas = 0;
        List<String> differences = new ArrayList<>();
        for (Sheet sheet : before) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        formulas++;
                        Row same = after.getSheet(sheet.getSheetName()).getRow(row.getRowNum());
                        compare(cell, same.getCell(cell.getColumnIndex()), differences);
                    }
                }
            }
        }
        return new Outcome(formulas, differences);
    }

    private static void compare(Cell before, Cell after, List<String> differences) {
        String written = value(before);
        String found = after == null ? "nothing" : value(after);
        if (!written.equals(found) && !near(before, after)) {
            differences.add(before.getSheet().getSheetName() + "!" + before.getAddress() + " ="
                    + before.getCellFormula() + ": written " + written + ", recalculated " + found);
        }
    }

    private static boolean near(Cell before, Cell after) {
        if (after == null || !isNumber(before) || !isNumber(after)) {
            return false;
        }
        double written = before.getNumericCellValue();
        return Math.abs(written - after.getNumericCellValue()) <= NEAR * Math.abs(written) + ZERO;
    }

    private static boolean isNumber(Cell cell) {
        return type(cell) == CellType.NUMERIC;
    }

    private static CellType type(Cell cell) {
        return cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
    }

    private static String value(Cell cell) {
        return switch (type(cell)) {
            case NUMERIC -> String.valueOf(cell.getNumericCellValue());
            case STRING -> cell.getStringCellValue();
            case ERROR -> "error " + cell.getErrorCellValue();
            default -> String.valueOf(cell);
        };
    }
}
