// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.workbook.text.WorkbookException;

/** However a workbook is damaged, it is read or refused by name; nothing else comes out. */
class DamagedListTest {
    private static final int EACH = 400;

    @TempDir
    private Path folder;

    private Path book(boolean hideFirst) throws IOException {
        Path file = folder.resolve("prices.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                var out = Files.newOutputStream(file)) {
            for (String name : new String[] {"first", "second"}) {
                XSSFSheet sheet = book.createSheet(name);
                for (int i = 0; i < 5; i++) {
                    Row row = sheet.createRow(i);
                    row.createCell(0).setCellValue(name + i);
                    row.createCell(1).setCellValue(i * 1.5);
                    row.createCell(2).setCellFormula("B" + (i + 1) + "*2");
                    row.getCell(2).setCellValue(i * 3.0);
                }
            }
            book.setActiveSheet(1);
            book.setSheetHidden(0, hideFirst);
            book.write(out);
        }
        return file;
    }

    @Test
    void theFirstSheetThatAPersonSeesIsRead() throws IOException {
        assertEquals("first0", PriceBookSheet.read(book(false)).get(0).cells().get(0));
        assertEquals("second0", PriceBookSheet.read(book(true)).get(0).cells().get(0));
    }

    @Test
    void whatTheReceiverOfARowThrowsIsNoDamage() throws IOException {
        Path file = book(false);
        assertThrows(
                ArithmeticException.class,
                () -> ListSheet.read(file, row -> {
                    throw new ArithmeticException();
                }));
    }

    @Test
    void changedBytesAreReadOrRefused() throws IOException {
        byte[] whole = Files.readAllBytes(book(false));
        Random random = new Random(1);
        int refused = 0;
        for (int i = 0; i < EACH; i++) {
            byte[] changed = whole.clone();
            for (int n = 1 + random.nextInt(4); n > 0; n--) {
                changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
            }
            refused += refused(changed);
        }
        assertTrue(refused > EACH / 4, "damage is seen: " + refused);
    }

    /** Changes of the XML inside, in a sound archive: cell addresses, styles, numbers of rows and of shared texts. */
    @Test
    void changedPartsAreReadOrRefused() throws IOException {
        Map<String, byte[]> parts = parts(book(false));
        List<String> names = new ArrayList<>(parts.keySet());
        Random random = new Random(2);
        for (int i = 0; i < EACH; i++) {
            Map<String, byte[]> changed = new LinkedHashMap<>(parts);
            String name = names.get(random.nextInt(names.size()));
            if (random.nextInt(5) == 0) {
                changed.remove(name);
            } else {
                changed.put(name, mutated(parts.get(name), random));
            }
            refused(zip(changed));
        }
    }

    private static byte[] mutated(byte[] part, Random random) {
        String text = new String(part, StandardCharsets.UTF_8);
        String[][] swaps = {
            {" r=\"[^\"]*\"", " r=\"99999999999\""},
            {" r=\"[^\"]*\"", " r=\"%\""},
            {" s=\"[^\"]*\"", " s=\"x\""},
            {"<c ", "<c s=\"77777\" "},
            {"<c ", "<c t=\"s\" "},
            {"<v>[^<]*</v>", "<v>1e999</v>"},
            {"<v>[^<]*</v>", "<v>-7</v>"},
            {"numFmtId=\"\\d+\"", "numFmtId=\"-1\""},
            {"count=\"\\d+\"", "count=\"2147483647\""},
            {"r:id=\"[^\"]*\"", "r:id=\"none\""},
            {"Target=\"[^\"]*\"", "Target=\"../../../etc/passwd\""}
        };
        String[] swap = swaps[random.nextInt(swaps.length)];
        String changed = random.nextBoolean() ? text.replaceFirst(swap[0], swap[1]) : text.replaceAll(swap[0], swap[1]);
        if (changed.equals(text) && text.length() > 10) {
            int from = random.nextInt(text.length() - 5);
            changed = text.substring(0, from) + text.substring(from + 1 + random.nextInt(4));
        }
        return changed.getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, byte[]> parts(Path book) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(book.toFile())) {
            for (ZipEntry entry : java.util.Collections.list(zip.entries())) {
                parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return parts;
    }

    private static byte[] zip(Map<String, byte[]> parts) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
            }
        }
        return out.toByteArray();
    }

    private int refused(byte[] content) throws IOException {
        Path file = Files.write(folder.resolve("damaged.xlsx"), content);
        try {
            PriceBookSheet.read(file);
            return 0;
        } catch (WorkbookException refused) {
            String message = String.valueOf(refused.getMessage());
            assertTrue(message.startsWith("damaged.xlsx: "), message);
            assertEquals(message.indexOf("damaged.xlsx"), message.lastIndexOf("damaged.xlsx"), message);
            return 1;
        } catch (java.util.zip.ZipException | java.io.EOFException damaged) {
            return 1;
        }
    }
}
