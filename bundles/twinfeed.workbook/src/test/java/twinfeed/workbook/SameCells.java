// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The yardstick: a plain program that writes the cells of a book with POI's ordinary model and does nothing else. {@code list BOOK
 * LIST} lists a book's cells, {@code write LIST BOOK} writes a list's cells and says how long that took.
 */
public final class SameCells {
    private SameCells() {}

    /** Arguments: list or write, from, to. */
    public static void main(String[] arguments) throws Exception {
        if (arguments[0].equals("list")) {
            Files.write(Path.of(arguments[2]), list(Path.of(arguments[1])));
            return;
        }
        List<String> lines = Files.readAllLines(Path.of(arguments[1]));
        Watch watch = new Watch();
        byte[] bytes = write(lines);
        System.out.printf("%d lines, %d bytes, %s%n", lines.size(), bytes.length, watch);
        Files.write(Path.of(arguments[2]), bytes);
    }

    private static List<String> list(Path file) throws Exception {
        List<String> lines = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            for (Name name : book.getAllNames()) {
                if (name.getNameName().startsWith("v_")) {
                    lines.add("name\t" + name.getNameName() + "\t" + name.getRefersToFormula());
                }
            }
            for (Sheet sheet : book) {
                lines.add("sheet\t" + sheet.getSheetName());
                for (Row row : sheet) {
                    lines.add("row\t" + row.getRowNum() + "\t" + row.getHeightInPoints());
                    row.forEach(cell -> lines.add(cell(cell)));
                }
            }
        }
        return lines;
    }

    private static String cell(Cell cell) {
        String head = cell.getColumnIndex() + "\t" + cell.getCellStyle().getIndex() + "\t";
        return switch (cell.getCellType()) {
            case NUMERIC -> "number\t" + head + cell.getNumericCellValue();
            case FORMULA ->
                switch (cell.getCachedFormulaResultType()) {
                    case NUMERIC -> "formula\t" + head + cell.getNumericCellValue() + "\t" + cell.getCellFormula();
                    default -> "formulaText\t" + head + cell.getStringCellValue() + "\t" + cell.getCellFormula();
                };
            case STRING -> "text\t" + head + cell.getStringCellValue().replace("\n", " ");
            default -> "blank\t" + head;
        };
    }

    private static byte[] write(List<String> lines) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            book.setCellFormulaValidation(false);
            Map<String, XSSFCellStyle> styles = new HashMap<>();
            List<String[]> names = new ArrayList<>();
            XSSFSheet sheet = null;
            XSSFRow row = null;
            for (String line : lines) {
                String[] part = line.split("\t", -1);
                if (part[0].equals("name")) {
                    names.add(part);
                } else if (part[0].equals("sheet")) {
                    sheet = book.createSheet(part[1]);
                } else if (part[0].equals("row") && sheet != null) {
                    row = sheet.createRow(Integer.parseInt(part[1]));
                    row.setHeightInPoints(Float.parseFloat(part[2]));
                } else if (row != null) {
                    write(
                            row.createCell(Integer.parseInt(part[1])),
                            part,
                            styles.computeIfAbsent(part[2], key -> style(book)));
                }
            }
            for (String[] part : names) {
                Name name = book.createName();
                name.setNameName(part[1]);
                name.setRefersToFormula(part[2]);
            }
            book.write(out);
        }
        return out.toByteArray();
    }

    private static XSSFCellStyle style(XSSFWorkbook book) {
        XSSFCellStyle style = book.createCellStyle();
        style.setWrapText(true);
        return style;
    }

    private static void write(XSSFCell cell, String[] part, XSSFCellStyle style) {
        cell.setCellStyle(style);
        switch (part[0]) {
            case "number" -> cell.setCellValue(Double.parseDouble(part[3]));
            case "text" -> cell.setCellValue(part[3]);
            case "formula" -> {
                cell.setCellFormula(part[4]);
                cell.setCellValue(Double.parseDouble(part[3]));
            }
            case "formulaText" -> {
                cell.setCellFormula(part[4]);
                cell.setCellValue(part[3]);
            }
            default -> cell.setBlank();
        }
    }
}
