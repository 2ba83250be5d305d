// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookVerbTest {
    private static final Path BOOK = Run.DEMO.resolve("prices.csv");

    @TempDir
    private Path folder;

    /** The demonstration's list as an office would keep it in a workbook: figures as numbers, days as days. */
    private Path workbook() throws IOException {
        Path file = folder.resolve("prices.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file);
                var reader = Files.newBufferedReader(BOOK)) {
            Sheet sheet = book.createSheet("Prices");
            int number = 0;
            for (CSVRecord record : CSVFormat.RFC4180.parse(reader)) {
                Row row = sheet.createRow(number++);
                for (int at = 0; at < record.size(); at++) {
                    String text = record.get(at);
                    if (text.matches("\\d+(\\.\\d+)?")) {
                        row.createCell(at).setCellValue(Double.parseDouble(text));
                    } else if (!text.isEmpty()) {
                        row.createCell(at).setCellValue(text);
                    }
                }
            }
            book.write(out);
        }
        return file;
    }

    @Test
    void aWorkbookPricesTheQuoteAsTheCsvDoes() throws IOException {
        Path sheet = workbook();
        Files.copy(Run.DEMO.resolve("netherquill.png"), folder.resolve("netherquill.png"));
        for (String name : List.of("firm.properties", "standing-texts.properties")) {
            Files.copy(Run.DEMO.resolve(name), folder.resolve(name));
        }
        Path out = folder.resolve("quote.xlsx");
        Object job = Run.DEMO.resolve("alder-beck.job");
        Run fromSheet = Run.of("quote", job, "--book", sheet, "--out", out, "--json");
        assertEquals(0, fromSheet.status(), fromSheet.err());
        Run fromText = Run.of("quote", job, "--book", BOOK, "--out", out, "--json");
        assertEquals(fromText.out(), fromSheet.out());
    }

    @Test
    void saysWhatAListChanges() throws IOException {
        Path sheet = workbook();
        Run same = Run.of("book", sheet, "--against", BOOK);
        assertEquals(0, same.status(), same.err());
        assertFalse(same.out().contains("~ ") || same.out().contains("New:"), same.out());
        String dearer = Files.readString(BOOK)
                .replace(
                        "h95,\"Heater 9.5 kW, two-element\",each,112.00,158.00",
                        "h95,\"Heater 9.5 kW, two-element\",each,112.00,162.50");
        Path list =
                Files.writeString(folder.resolve("new.csv"), dearer + "h00,Heater,each,1.00,2.00,,,standard,,,,,,\n");
        Path taken = folder.resolve("taken.csv");
        Run changed = Run.of("book", list, "--against", BOOK, "--out", taken);
        assertEquals(0, changed.status(), changed.err());
        assertTrue(changed.out().contains("~ h95 price: 158.00 -> 162.50"), changed.out());
        assertTrue(changed.out().contains("New: (1) h00"), changed.out());
        assertEquals(0, Run.of("book", taken, "--against", list).status());
    }

    /** Before a quote needs them, the list says which codes of works, of every job and of repairs it lacks. */
    @Test
    void namesTheCodesThatAListLacks() throws IOException {
        String less = Files.readString(BOOK)
                .lines()
                .filter(line -> !line.startsWith("cable-10,")
                        && !line.startsWith("strainer-clean,")
                        && !line.startsWith("task-isolate,")
                        && !line.startsWith("part-hose,"))
                .collect(Collectors.joining("\n"));
        Path list = Files.writeString(folder.resolve("less.csv"), less);
        Run text = Run.of("book", list);
        assertEquals(0, text.status(), text.err());
        assertTrue(text.out().contains("priced on request: task-isolate"), text.out());
        assertTrue(text.out().contains("cable-10"), text.out());
        assertTrue(text.out().contains("Repairs may need codes that the list lacks: part-hose"), text.out());
        String json = Run.of("book", list, "--json").out();
        assertTrue(json.contains("\"codes\" : [ \"strainer-clean\" ]"), json);
        assertFalse(Run.of("book", BOOK).out().contains("Every job may need"), "the demonstration's list is complete");
    }

    /** A line for each kind of difference, with how many there are, and what becomes of the list at the end. */
    @Test
    void listsWhatIsNewOtherAndGoneAndEndsWithWhatBecomesOfIt() throws IOException {
        String other = Files.readString(BOOK)
                .replace("# valid-days: 30", "# valid-days: 45")
                .lines()
                .filter(line -> !line.startsWith("cable-10,") && !line.startsWith("part-hose,"))
                .collect(Collectors.joining("\n", "", "\nh00,Heater,each,1.00,2.00,,,standard,,,,,,\n"));
        Path list = Files.writeString(folder.resolve("other.csv"), other);
        Path out = folder.resolve("out.csv");
        Run run = Run.of("book", list, "--against", BOOK, "--out", out);
        assertEquals(0, run.status(), run.err());
        List<String> lines = run.out().lines().toList();
        assertTrue(lines.contains("New: (1) h00"), run.out());
        assertTrue(lines.contains("~ validDays: 30 -> 45"), run.out());
        assertTrue(lines.contains("No longer there: (2) cable-10, part-hose"), run.out());
        assertEquals("The list can be used as a price book.", lines.get(lines.size() - 2));
        assertEquals("Written: " + out, lines.get(lines.size() - 1));
        List<String> same =
                Run.of("book", BOOK, "--against", BOOK).out().lines().toList();
        assertTrue(same.stream().noneMatch(line -> line.matches("(New:|~|No longer there:).*")), same.toString());
        assertEquals("The list can be used as a price book.", same.get(same.size() - 1));
    }

    @Test
    void aRowThatCannotBeUsedIsAMessageAndTheAnswerSaysThatNothingWasTaken() throws IOException {
        Path list = Files.writeString(
                folder.resolve("bad.csv"), Files.readString(BOOK) + "h00,Heater,each,1.00,2;00,,,standard,,,,,,\n");
        Path out = folder.resolve("out.csv");
        Run run = Run.of("book", list, "--out", out);
        assertEquals(2, run.status());
        assertTrue(run.out().strip().endsWith("\nNothing was taken: correct the rejected rows first."), run.out());
        assertFalse(run.out().contains("Written:"), run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains("2;00"), run.err());
        assertFalse(Files.exists(out));
        Run json = Run.of("book", list, "--json");
        assertEquals(2, json.status());
        assertTrue(json.out().contains("\"usable\" : false"), json.out());
    }

    @Test
    void takesNothingOfAListWithOneBadRow() throws IOException {
        String bad = Files.readString(BOOK)
                .replace(
                        "cable-10,\"Flat twin and earth cable, 10 mm²\",m,2.74,3.95",
                        "cable-10,\"Flat twin and earth cable, 10 mm²\",m,2.74,\"3,95\"");
        Path list = Files.writeString(folder.resolve("bad.csv"), bad);
        Path out = folder.resolve("out.csv");
        Run run = Run.of("book", list, "--out", out);
        assertEquals(2, run.status(), run.out());
        assertTrue(run.err().contains("cable-10") || run.err().contains("3,95"), run.err());
        assertFalse(Files.exists(out));
    }

    @Test
    void saysThatThereIsNoSuchList() {
        Run run = Run.of("book", folder.resolve("none.xlsx"));
        assertEquals(2, run.status());
        assertTrue(run.err().contains("none.xlsx: there is no such file"), run.err());
    }

    @Test
    void noFileThatWasReadIsReplacedAndTheNameSaysTheKind() throws IOException {
        Path list = Files.copy(BOOK, folder.resolve("list.csv"));
        Path present = Files.copy(BOOK, folder.resolve("present.csv"));
        for (Path out : List.of(list, present, folder.resolve("list.txt"))) {
            Run run = Run.of("book", list, "--against", present, "--out", out);
            assertEquals(2, run.status(), run.out());
            assertTrue(run.err().contains(out.getFileName().toString()), run.err());
        }
        assertEquals(Files.readString(BOOK), Files.readString(list));
        assertEquals(Files.readString(BOOK), Files.readString(present));
        assertFalse(Files.exists(folder.resolve("list.txt")));
    }

    /** A row that can be used and is odd all the same: it stands below the others, and the list is usable. */
    @Test
    void whatIsOddInARowIsSaid() throws IOException {
        Path list = Files.writeString(
                folder.resolve("odd.csv"), Files.readString(BOOK) + "h00,Heater,each,5.00,2.00,,,standard,,,,,,\n");
        Run run = Run.of("book", list);
        assertEquals(0, run.status(), run.err());
        assertTrue(
                run.out().lines().anyMatch(line -> line.startsWith("  ") && line.contains("sells below its cost")),
                run.out());
    }
}
