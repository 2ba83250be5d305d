// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.batch.BatchTask;
import twinfeed.usecase.batch.BatchWriting;

class BatchVerbTest {
    private static final Path JOB = Run.DEMO.resolve("alder-beck.job");
    private static final Path BOOK = Run.DEMO.resolve("prices.csv");

    @TempDir
    private Path folder;

    private Path out;

    @BeforeEach
    void out() {
        out = folder.resolve("result.xlsx");
    }

    private Run batch(Path list, Object... more) {
        List<Object> words =
                new java.util.ArrayList<>(List.of("batch", list, "--template", JOB, "--book", BOOK, "--out", out));
        words.addAll(List.of(more));
        return Run.of(words.toArray());
    }

    private Path list(String... lines) throws IOException {
        return Files.writeString(folder.resolve("list.csv"), String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
    }

    private static List<String> head(Sheet sheet) {
        Row row = sheet.getRow(1);
        return IntStream.range(0, row.getLastCellNum())
                .mapToObj(at -> row.getCell(at).getStringCellValue())
                .toList();
    }

    private XSSFWorkbook result() throws IOException {
        try (InputStream in = Files.newInputStream(out)) {
            return new XSSFWorkbook(in);
        }
    }

    private static Cell cell(Sheet sheet, int row, String head) {
        return sheet.getRow(row).getCell(head(sheet).indexOf(head));
    }

    @Test
    void theDemonstrationListIsJudgedAndPricedWithWrongRowsRejected() throws IOException {
        Run run = batch(Run.DEMO.resolve("dwellings.csv"));
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("Dwellings judged: 6") && run.out().contains("Rows rejected: 2"), run.out());
        assertTrue(run.out().contains("Caution"), run.out());
        assertTrue(run.err().contains("Alder Beck 8: water.test.flow \"12 kW\""), run.err());
        assertTrue(run.out().contains("A safety check fails now in: 4"), run.out());
        try (XSSFWorkbook book = result()) {
            Sheet dwellings = book.getSheet("Dwellings");
            assertEquals(
                    List.of(
                            "Alder Beck 2: 1 a safety check fails now",
                            "Alder Beck 3: 1 a safety check fails now",
                            "Alder Beck 4: 1 a safety check fails now",
                            "Alder Beck 6: 1 a safety check fails now",
                            "Alder Beck 1: 5 nothing urgent",
                            "Alder Beck 5: 5 nothing urgent"),
                    rows(dwellings, "Dwelling", "Urgency"));
            assertEquals(
                    "Capacity of the cable",
                    cell(dwellings, 2, "What is unsafe").getStringCellValue());
            Sheet refused = book.getSheet("Rejected");
            assertEquals(
                    List.of(8.0, 9.0),
                    List.of(
                            cell(refused, 2, "Row").getNumericCellValue(),
                            cell(refused, 3, "Row").getNumericCellValue()));
        }
    }

    /** The cells of some columns of each row, with colons between. */
    private static List<String> rows(Sheet sheet, String... heads) {
        return IntStream.rangeClosed(2, sheet.getLastRowNum())
                .mapToObj(row -> java.util.Arrays.stream(heads)
                        .map(head -> cell(sheet, row, head).toString())
                        .collect(java.util.stream.Collectors.joining(": ")))
                .toList();
    }

    /** The cable that can overheat comes before the dwelling whose readings are missing, whatever else is missing there. */
    @Test
    void dangerComesFirstThenAgeThenComplaints() throws IOException {
        Run run = batch(list(
                "dwelling,unit.age,symptoms,electricity.circuit.segments[2].method,water.test.flow,electricity.circuit.device.rating",
                "Young,3,,C,,40 A",
                "Old,19,,C,,40 A",
                "Complaint,19,goesColdWhenTapOpens;someHeatButWeak,C,,40 A",
                "No age,,,C,,40 A",
                "Hot cable,1,,101,-,40 A",
                "Smell,2,smellAtUnit,C,,40 A"));
        assertEquals(0, run.status(), run.err());
        try (XSSFWorkbook book = result()) {
            List<String> order = rows(book.getSheet("Dwellings"), "Dwelling");
            assertEquals(List.of("Hot cable", "Smell", "Complaint", "Old", "Young", "No age"), order);
        }
    }

    @Test
    void eachReadingSaysWhereItIsFrom() throws IOException {
        Run run = batch(list(
                "dwelling,unit.age,water.test.flow,site.lastInspection,unit.guaranteeUntil",
                "One,9,-,,2027-01-01",
                "Two,,11 L/min,2024-05-06,"));
        assertEquals(0, run.status(), run.err());
        try (XSSFWorkbook book = result()) {
            List<String> readings = rows(book.getSheet("Readings"), "Dwelling", "Reading", "Value", "Where it is from");
            assertEquals(
                    List.of(
                            "One: Present unit: Age, years: 9: own",
                            "One: Two-point test: Flow while running: : missing",
                            "One: Dwelling: Last electrical inspection: : missing",
                            "One: Present unit: Guarantee until: 2027-01-01: own",
                            "Two: Present unit: Age, years: 11: from the template",
                            "Two: Two-point test: Flow while running: 11 L/min: own",
                            "Two: Dwelling: Last electrical inspection: 2024-05-06: own",
                            "Two: Present unit: Guarantee until: : missing"),
                    readings);
            Sheet dwellings = book.getSheet("Dwellings");
            int one = rows(dwellings, "Dwelling").indexOf("One") + 2;
            assertEquals(2, cell(dwellings, one, "Own readings").getNumericCellValue());
            assertEquals(0, cell(dwellings, one, "From template").getNumericCellValue());
            assertEquals(2, cell(dwellings, one, "Missing").getNumericCellValue());
            List<String> shared = rows(book.getSheet("From the template"), "Reading");
            assertTrue(shared.contains("water.hardness"), shared.toString());
            assertFalse(shared.contains("unit.age"), "the list has a column for it");
            assertFalse(
                    shared.stream().anyMatch(reading -> reading.startsWith("symptoms") || reading.startsWith("photos")),
                    shared.toString());
        }
    }

    @Test
    void totalsAddUpByVerdictWorkAndCost() throws IOException {
        assertEquals(0, batch(Run.DEMO.resolve("dwellings.csv")).status());
        try (XSSFWorkbook book = result()) {
            Sheet totals = book.getSheetAt(0);
            double offers = 0;
            double works = 0;
            double sum = 0;
            double counted = 0;
            for (int row = 2; row <= totals.getLastRowNum(); row++) {
                String group = cell(totals, row, "By").getStringCellValue();
                double net = cell(totals, row, "Net").getNumericCellValue();
                offers += group.equals("First offer") ? net : 0;
                works += group.equals("Work, added up") || group.equals("Other lines") ? net : 0;
                sum += group.equals("Sum") ? net : 0;
                counted += group.equals("Present unit")
                        ? cell(totals, row, "Dwellings").getNumericCellValue()
                        : 0;
            }
            double single = 0;
            Sheet priced = book.getSheet("Offers");
            for (int row = 2; row <= priced.getLastRowNum(); row++) {
                single += cell(priced, row, "Net").getNumericCellValue();
            }
            assertEquals(6, counted);
            assertEquals(single, sum, 0.001);
            assertEquals(single, offers, 0.001);
            assertEquals(single, works, 0.001);
        }
    }

    @Test
    void visitsAreGroupedByStreet() throws IOException {
        Run run = batch(list(
                "dwelling,site.address,electricity.circuit.segments[2].method,unit.age",
                "A,\"1 Rowan Lane; Netherquill\",C,3",
                "B,\"Flat 2, 14a Sorrel Row; Netherquill\",101,4",
                "C,the old forge,C,30",
                "D,\"7 rowan  lane; Netherquill\",C,2",
                "E,\"3 Sorrel Row; Netherquill\",C,1"));
        assertEquals(0, run.status(), run.err());
        try (XSSFWorkbook book = result()) {
            assertEquals(
                    List.of(
                            "1.0: Sorrel Row, Netherquill: B",
                            "1.0: Sorrel Row, Netherquill: E",
                            "2.0: Rowan Lane, Netherquill: A",
                            "2.0: rowan  lane, Netherquill: D",
                            "3.0: no address with a house number: C"),
                    rows(book.getSheet("Visits"), "Visit", "Street", "Dwelling"));
        }
    }

    @Test
    void aComplaintIsAnsweredByRepairOrReplacement() throws IOException {
        Run run = batch(list("dwelling,symptoms", "One,isolatorHot", "Two,"));
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("a repair may be the answer, in: 1"), run.out());
        try (XSSFWorkbook book = result()) {
            Sheet repairs = book.getSheet("Repairs");
            assertEquals(
                    List.of("One: Is the local isolator hot, scorched or crackling?"),
                    rows(repairs, "Dwelling", "Complaint"));
            assertTrue(
                    cell(repairs, 2, "Repair or replace").getStringCellValue().contains("local isolator"));
            Run single = Run.of("faults", withComplaint("isolatorHot"), "--book", BOOK, "--json");
            assertEquals(
                    new com.fasterxml.jackson.databind.ObjectMapper()
                            .readTree(single.out())
                            .get("repair")
                            .get("repair")
                            .asDouble(),
                    cell(repairs, 2, "Repair, net").getNumericCellValue(),
                    "as the verb faults says of that dwelling alone");
        }
        Run unknown = batch(list("dwelling,symptoms", "One,isolatrHot"));
        assertTrue(unknown.err().contains("did you mean isolatorHot?"), unknown.err());
    }

    /** The template's job with this one complaint. */
    private Path withComplaint(String key) throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        String job = Files.readString(JOB);
        assertTrue(job.contains("goesColdWhenTapOpens"));
        return Files.writeString(
                folder.resolve("complaint.job"),
                job.replaceAll("<symptoms [^>]*/>", "<symptoms key=\"" + key + "\"/>")
                        .replaceAll("(?s)<photos .*?/>", ""));
    }

    /** Each sheet prints one page wide with its head on every page, and can be filtered. */
    @Test
    void everySheetPrintsOnePageWideWithItsHead() throws IOException {
        assertEquals(0, batch(list("dwelling,symptoms", "One,isolatorHot")).status());
        try (XSSFWorkbook book = result()) {
            assertEquals(9, book.getNumberOfSheets());
            book.forEach(sheet -> {
                assertEquals(1, sheet.getPrintSetup().getFitWidth(), sheet.getSheetName());
                assertEquals(0, sheet.getPrintSetup().getFitHeight(), sheet.getSheetName());
                assertTrue(sheet.getFitToPage() && sheet.getPrintSetup().getLandscape(), sheet.getSheetName());
                assertEquals(1, sheet.getRepeatingRows().getFirstRow(), sheet.getSheetName());
                int digits = 0;
                for (int column = 0; column < sheet.getRow(1).getLastCellNum(); column++) {
                    digits += sheet.getColumnWidth(column) / 256;
                }
                // 147 digits of 10 pt are as wide as A4 across; what is printed smaller than 8 pt is hard to read.
                assertTrue(digits <= 184, sheet.getSheetName() + " is " + digits + " digits wide");
            });
        }
    }

    @Test
    void aDwellingNamedTwiceIsRejectedAndNamed() throws IOException {
        Run run = batch(list("dwelling,unit.age", "Alder Beck 1,9", "# a remark,", "Alder Beck 2,8", "alder beck 1,7"));
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("Dwellings judged: 2") && run.out().contains("Rows rejected: 1"), run.out());
        assertTrue(
                run.err().contains("line 5, alder beck 1: the list names this dwelling in line 2 already"), run.err());
    }

    @Test
    void theTemplatesInspectionIsNoDwellingsOwn() throws IOException {
        Run run = batch(list("dwelling,site.lastInspection", "Alder Beck 1,2024-05-06", "Alder Beck 2,"));
        assertEquals(0, run.status(), run.err());
        try (XSSFWorkbook book = result()) {
            Sheet sheet = book.getSheet("Dwellings");
            assertEquals(
                    java.time.LocalDate.of(2024, 5, 6),
                    cell(sheet, 2, "Last inspection")
                            .getLocalDateTimeCellValue()
                            .toLocalDate());
            assertEquals(
                    org.apache.poi.ss.usermodel.CellType.BLANK,
                    cell(sheet, 3, "Last inspection").getCellType());
            book.forEach(each -> assertTrue(
                    ((org.apache.poi.xssf.usermodel.XSSFSheet) each)
                            .getCTWorksheet()
                            .isSetAutoFilter(),
                    each.getSheetName()));
        }
    }

    /** A row that says nothing is the job itself: the same verdicts and, to the penny, the same price. */
    @Test
    void anEmptyRowIsTheJobItself() throws IOException {
        assertEquals(0, batch(list("dwelling,water.test.flow", "As surveyed,")).status());
        Path quote = folder.resolve("quote.xlsx");
        Run single = Run.of("quote", JOB, "--book", BOOK, "--out", quote, "--json");
        com.fasterxml.jackson.databind.JsonNode option = new com.fasterxml.jackson.databind.ObjectMapper()
                .readTree(single.out())
                .get("options")
                .get(0);
        try (XSSFWorkbook book = result()) {
            Sheet dwellings = book.getSheet("Offers");
            assertEquals(
                    option.get("title").asText(),
                    cell(dwellings, 2, "First offer").getStringCellValue());
            assertEquals(
                    option.get("total").asDouble(),
                    cell(dwellings, 2, "With tax").getNumericCellValue());
            assertEquals(option.get("net").asDouble(), cell(dwellings, 2, "Net").getNumericCellValue());
        }
    }

    @Test
    void aWorkbookIsReadAsTheSameListIsInCsv() throws IOException {
        Path sheet = folder.resolve("list.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream stream = Files.newOutputStream(sheet)) {
            Sheet page = book.createSheet();
            String[][] cells = {
                {"dwelling", "water.test.staticPressure", "unit.age"}, {"One", "3.4 bar", ""}, {"Two", "2.9 bar", "7"}
            };
            for (int row = 0; row < cells.length; row++) {
                Row line = page.createRow(row);
                for (int at = 0; at < cells[row].length; at++) {
                    if (row == 2 && at == 2) {
                        line.createCell(at).setCellValue(7);
                    } else {
                        line.createCell(at).setCellValue(cells[row][at]);
                    }
                }
            }
            book.write(stream);
        }
        assertEquals(0, batch(sheet, "--date", "2026-11-25").status());
        byte[] first = Files.readAllBytes(out);
        Path csv = list("dwelling,water.test.staticPressure,unit.age", "One,3.4 bar,", "Two,2.9 bar,7");
        Files.move(csv, folder.resolve("list.xlsx.csv"));
        assertEquals(0, batch(sheet, "--date", "2026-11-25").status());
        assertArrayEquals(first, Files.readAllBytes(out), "the same list gives the same bytes");
        try (XSSFWorkbook fromSheet = result()) {
            assertEquals(0, batch(folder.resolve("list.xlsx.csv")).status());
            try (XSSFWorkbook fromText = result()) {
                for (Sheet page : fromSheet) {
                    String[] heads = head(page).toArray(String[]::new);
                    assertEquals(rows(page, heads), rows(fromText.getSheet(page.getSheetName()), heads));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "water.test.flow | 12 L/min | no column names the dwelling",
                "dwelling,unit.age,survey.unit.age | One,1,2 | two columns are for this",
                "dwelling,dwelling | One,Two | two columns are for this",
                "dwelling,water.segments[2].length,water.segments[rising main].length | One,1 m,2 m | two columns are"
                        + " for this",
                "dwelling,water.hardnes | One,1 mg/L | did you mean water.hardness?",
                "dwelling,water.segments.length | One,1 m | say which one in square brackets",
                "dwelling |  | it names no dwelling",
                "dwelling | One,\"two | a double quote opens here and does not close",
            })
    void anUnusableListLeavesNothing(String head, String row, String wrong) throws IOException {
        Run run = batch(row == null ? list(head) : list(head, row));
        assertEquals(2, run.status(), run.out());
        assertTrue(run.err().contains(wrong) && run.err().contains("list.csv"), run.err());
        assertFalse(Files.exists(out));
    }

    /** As spreadsheet programs save lists: with semicolons and decimal commas, with tabs, in either encoding, units left to the head. */
    @Test
    void aPlainNumberIsInTheUnitOfItsColumn() throws IOException {
        String semicolons = "dwelling;site.address;water.test.staticPressure;electricity.circuit.rcd.residual\n"
                + "\u00c4hrenweg 1;\u00c4hrenweg 1;3,4 \u00b1 0,1;30\n";
        String tabs = semicolons.replace(';', '\t').replace(',', '.');
        List<byte[]> lists = List.of(
                semicolons.getBytes(StandardCharsets.UTF_8),
                ("\uFEFF" + semicolons).getBytes(StandardCharsets.UTF_8),
                semicolons.getBytes(Charset.forName("windows-1252")),
                tabs.getBytes(StandardCharsets.UTF_8));
        for (byte[] list : lists) {
            Run run = batch(Files.write(folder.resolve("list.csv"), list));
            assertEquals(0, run.status(), run.err());
            try (XSSFWorkbook book = result()) {
                String readings = rows(book.getSheet("Readings"), "Dwelling", "Reading", "Value")
                        .toString();
                assertTrue(readings.contains("\u00c4hrenweg 1"), readings);
                assertTrue(readings.contains("3.4 bar \u00b1 0.1 bar"), readings);
                assertTrue(readings.contains("30 mA"), readings);
            }
        }
    }

    @Test
    void refusesTextInNeitherEncoding() throws IOException {
        Path list = Files.write(
                folder.resolve("list.csv"),
                new byte[] {'d', 'w', 'e', 'l', 'l', 'i', 'n', 'g', '\n', (byte) 0x81, '\n'});
        Run run = batch(list);
        assertEquals(2, run.status(), run.err());
        assertTrue(run.err().contains("UTF-8"), run.err());
    }

    /** A line for what there is, none for complaints, unanswered checks or rows of earlier work where there are none. */
    @Test
    void theAnswerHasNoLineForNothing() throws IOException {
        Run run = batch(list("dwelling,symptoms", "One,-"));
        assertEquals(0, run.status(), run.err());
        List<String> lines = run.out().lines().toList();
        assertEquals(
                List.of(
                        "Dwellings judged: 1",
                        "A heater that suits can be offered to: 1",
                        "A safety check fails now in: 1",
                        "Rows rejected: 0"),
                lines.subList(0, 4));
        assertTrue(lines.get(4).startsWith("Caution: "), run.out());
        assertEquals("Written: " + out, lines.get(5));
        assertEquals(6, lines.size(), run.out());
        // A list that takes more than a second, as on a busy machine, says how far it is.
        assertEquals(
                List.of(),
                run.err()
                        .lines()
                        .filter(line -> !line.matches("1 of 1 rows, \\d+ s, \\d+\\.\\d a second, 0 s left"))
                        .toList());
    }

    @Test
    void ofManyRejectedRowsTheFirstAreNamedAndTheRestCounted() throws IOException {
        List<String> lines = new java.util.ArrayList<>(List.of("dwelling,unit.age"));
        for (int row = 0; row < 1003; row++) {
            lines.add("House " + row + ",old");
        }
        Run run = batch(list(lines.toArray(String[]::new)));
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("Rows rejected: 1003"), run.out());
        List<String> told =
                run.err().lines().filter(line -> line.contains("House ")).toList();
        assertTrue(told.get(0).startsWith(folder.resolve("list.csv") + ", line 2, House 0: "), told.get(0));
        assertTrue(run.err().contains("More rows rejected; the workbook lists them all: 3"), run.err());
    }

    @Test
    void speaksGerman() throws IOException {
        assertEquals(0, batch(list("dwelling", "Haus 1"), "--language", "de").status());
        try (XSSFWorkbook book = result()) {
            Sheet dwellings = book.getSheet("Angebote");
            assertTrue(cell(dwellings, 2, "Begründung").getStringCellValue().contains("passt"));
        }
        Run unknown = batch(list("dwelling", "Haus 1"), "--language", "fr");
        assertEquals(2, unknown.status());
        assertTrue(unknown.err().contains("en, de"), unknown.err());
    }

    @Test
    void noFileThatWasReadIsReplacedAndTheNameSaysTheForm() throws IOException {
        Path list = list("dwelling", "One");
        Path book = Files.copy(BOOK, folder.resolve("prices.csv"));
        for (Path wrong : List.of(list, book, folder.resolve("result.txt"))) {
            Run run = Run.of("batch", list, "--template", JOB, "--book", book, "--out", wrong);
            assertEquals(2, run.status(), run.out());
            assertTrue(run.err().contains(wrong.getFileName().toString()), run.err());
        }
        assertEquals("dwelling\nOne\n", Files.readString(list));
        assertFalse(Files.exists(folder.resolve("result.txt")));
    }

    /** Without its water test nobody can tell whether a heater suits: its price is no offer that a landlord could order by. */
    @Test
    void whereReadingsAreMissingTheOfferIsAnEstimate() throws IOException {
        Path list = list(
                "dwelling,water.test.staticPressure,water.test.runningPressure,water.test.flow", "One,,,", "Two,-,-,-");
        Run run = batch(list);
        assertEquals(0, run.status(), run.err());
        List<String> told = run.out().lines().toList();
        assertTrue(told.contains("A heater that suits can be offered to: 1"), run.out());
        assertTrue(
                told.contains("Only an estimate, as it is not known yet whether the heater suits, for: 1"), run.out());
        try (XSSFWorkbook book = result()) {
            Sheet offers = book.getSheet("Offers");
            int two = rows(offers, "Dwelling").indexOf("Two") + 2;
            assertEquals(
                    "? needs work, cannot tell yet", cell(offers, two, "Suits").getStringCellValue());
            assertTrue(cell(offers, two, "Net").getNumericCellValue() > 0);
            Sheet dwellings = book.getSheet("Dwellings");
            int again = rows(dwellings, "Dwelling").indexOf("Two") + 2;
            assertEquals(
                    "? needs work, cannot tell yet",
                    cell(dwellings, again, "First offer").getStringCellValue());
        }
        Path lines = folder.resolve("lines.csv");
        out = lines;
        assertTrue(batch(list, "--json").out().contains("\"offered\" : 1,\n  \"estimates\" : 1,"), "in JSON too");
    }

    /** The row is mended in the list; a template's own day is only odd, and is said before the rows are judged. */
    @Test
    void aDayThatIsStillToComeRejectsItsRow() throws IOException {
        Path job = Files.writeString(
                folder.resolve("ahead.job"),
                Files.readString(JOB).replaceFirst("takenOn=\"[^\"]*\"", "takenOn=\"2031-10-06\""));
        for (String beside : List.of("heaters.catalogue", "alder-beck-loft.jpg")) {
            Files.copy(Run.DEMO.resolve(beside), folder.resolve(beside));
        }
        Path list = list("dwelling,takenOn", "One,2026-11-26", "Two,2031-03-01", "Three,");
        Run run = Run.of("batch", list, "--template", job, "--book", BOOK, "--out", out);
        assertEquals(0, run.status(), run.err());
        List<String> told = run.err().lines().toList();
        assertEquals(
                job
                        + ", survey.takenOn \"2031-10-06\": this day is still to come, today is 2026-11-25; write the day on"
                        + " which the house was surveyed",
                told.get(0));
        assertEquals(
                list
                        + ", line 3, Two: survey.takenOn \"2031-03-01\": this day is still to come, today is 2026-11-25; write"
                        + " the day on which the house was surveyed",
                told.get(1));
        assertEquals(2, told.size(), run.err());
        assertTrue(run.out().contains("Dwellings judged: 2"), run.out());
    }

    /** Rows that were judged before the work was stopped are taken over, which is said beside the answer. */
    @Test
    void whatWasStoppedGoesOnWithTheSameCommand() throws IOException {
        Path list = list("dwelling,unit.age", "One,3", "Two,old", "Three,4");
        TwinfeedService service = TwinfeedService.onClassPath();
        BatchTask task = new BatchTask(
                service.open(JOB, null), service.book(BOOK), FirmFile.beside(BOOK), Run.DAY, CliContext.LOCALE);
        assertThrows(CancellationException.class, () -> new BatchWriting(service, task)
                .write(list, out, (done, all, before) -> {
                    if (done == 2) {
                        throw new CancellationException();
                    }
                }));
        assertFalse(Files.exists(out));
        Run run = batch(list);
        assertEquals(0, run.status(), run.err());
        assertTrue(run.err().contains("Judged before and taken over: 2"), run.err());
        assertTrue(run.out().contains("Dwellings judged: 2"), run.out());
        assertFalse(batch(list).err().contains("taken over"), "the work before was complete");
    }

    @Test
    void aJsonDocumentTakesThePlaceOfTheText() throws IOException {
        Run run = batch(list("dwelling", "One"), "--json");
        assertEquals(0, run.status(), run.err());
        com.fasterxml.jackson.databind.JsonNode answer =
                new com.fasterxml.jackson.databind.ObjectMapper().readTree(run.out());
        assertEquals(out.toString(), answer.get("result").asText());
        assertEquals(1, answer.get("judged").asInt());
    }

    /** The demonstration's prices hold from 2026-09-01: an earlier day is the caller's slip, not a fault of the program. */
    @Test
    void aDayBeforeThePricesHoldIsRefused() throws IOException {
        Run run = batch(list("dwelling", "One"), "--date", "2026-08-31");
        assertEquals(2, run.status(), run.err());
        assertTrue(run.err().contains("the price book holds from 2026-09-01"), run.err());
        assertFalse(Files.exists(out));
        assertEquals(0, batch(list("dwelling", "One"), "--date", "2026-09-01").status());
    }
}
