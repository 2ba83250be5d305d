// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.Check;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.document.Firm;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.io.InputException;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.units.Kind;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;

/** Work on a list without any calculator: quick, for nothing is worked out. */
final class BatchWritingTest {
    private static final TwinfeedService SERVICE = new TwinfeedService(List.of());
    private static final Path BOOK = Demo.FOLDER.resolve("prices.csv");
    private static final String LIST =
            """
            ## of the housing department
            dwelling,water.hardness,site.address
            Sedge Row 1,180 mg/L,1 Sedge Row; Westermere

            Sedge Row 2,hard,2 Sedge Row; Westermere
            sedge row  1,190 mg/L,1 Sedge Row; Westermere
            Sedge Row 3,420 mg/L,
            """;

    private final PriceBook prices = SERVICE.book(BOOK);
    private final OpenedJob template = SERVICE.open(Demo.FOLDER.resolve("rowan-brook.job"), null);

    @TempDir
    private Path folder;

    private Path list(String text) throws IOException {
        return Files.writeString(folder.resolve("list.csv"), text);
    }

    private BatchTask task() {
        return task(FirmFile.none());
    }

    private BatchTask task(FirmFile firm) {
        return new BatchTask(template, prices, firm, DemoBatch.DAY, Locale.UK);
    }

    /** For the firm that is described in a folder. */
    private BatchTask task(Path folderOfFirm) {
        return task(FirmFile.beside(folderOfFirm.resolve("prices.csv")));
    }

    private BatchReport written(Path list, Path out, BatchProgress progress) {
        return new BatchWriting(SERVICE, task()).write(list, out, progress);
    }

    @Test
    void everyRowIsJudgedOrRejectedAndToldInItsOrder() throws IOException {
        Path out = folder.resolve("out.csv");
        List<List<Integer>> progress = new ArrayList<>();
        List<JudgedDwelling> told = new ArrayList<>();
        BatchReport report = new BatchWriting(SERVICE, task())
                .write(list(LIST), out, (done, all, before) -> progress.add(List.of(done, all, before)), told::add);
        assertEquals(List.of(2, 2, 0), List.of(report.judged(), report.rejected(), report.before()));
        assertEquals(0, report.unsafe());
        assertEquals(List.of(List.of(1, 4, 0), List.of(2, 4, 0), List.of(3, 4, 0), List.of(4, 4, 0)), progress);
        assertEquals(
                List.of("Sedge Row 1", "Sedge Row 3"),
                told.stream().map(JudgedDwelling::name).toList());
        assertEquals(
                List.of("Sedge Row 2", "sedge row  1"),
                report.refused().stream().map(Refused::dwelling).toList());
        assertTrue(report.refused().get(1).reason().contains("3"), "the row that names it first");
        List<String> lines = Files.readAllLines(out);
        assertEquals(5, lines.size());
        assertTrue(lines.get(1).startsWith("3,Sedge Row 1,judged,"), lines.get(1));
        assertTrue(lines.get(2).startsWith("5,Sedge Row 2,rejected,"), lines.get(2));
        assertFalse(Files.exists(BatchJournal.beside(out)));
    }

    @Test
    void theWorkbookHasASheetForEverything() throws IOException {
        Path out = folder.resolve("out.xlsx");
        written(list(LIST), out, (done, all, before) -> {});
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(out))) {
            assertEquals(
                    9,
                    IntStream.range(0, book.getNumberOfSheets())
                            .mapToObj(book::getSheetName)
                            .distinct()
                            .count());
            XSSFSheet dwellings = book.getSheetAt(1);
            assertEquals("Sedge Row 1", String.valueOf(dwellings.getRow(2).getCell(1)));
            assertEquals("Sedge Row 3", String.valueOf(dwellings.getRow(3).getCell(1)));
            String template = cells(book.getSheetAt(7));
            assertTrue(template.contains("targetOutlet|40 \u00b0C"), template);
            assertFalse(template.contains("water.hardness"), "the list has a column for it");
            assertFalse(template.contains("notes|"), "of the template's house alone");
            assertTrue(cells(book.getSheetAt(0)).contains("rowan-brook.job"));
            assertTrue(cells(book.getSheetAt(8)).contains("hard"));
            assertTrue(cells(book.getSheetAt(6)).contains("Hardness"));
        }
    }

    private static String cells(XSSFSheet sheet) {
        StringBuilder cells = new StringBuilder();
        sheet.forEach(row -> {
            row.forEach(cell -> cells.append(cell).append('|'));
            cells.append('\n');
        });
        return cells.toString();
    }

    @Test
    void whatWasStoppedGoesOnOnlyAsTheSameWork() throws IOException {
        Path list = list(LIST);
        Path out = folder.resolve("out.csv");
        BatchProgress stop = (done, all, before) -> {
            if (done == 2) {
                throw new CancellationException();
            }
        };
        assertThrows(CancellationException.class, () -> written(list, out, stop));
        assertFalse(Files.exists(out));
        assertTrue(Files.exists(BatchJournal.beside(out)));
        assertEquals(2, written(list, out, (done, all, before) -> {}).before());
        assertThrows(CancellationException.class, () -> written(list, out, stop));
        prices.getItems().get(0).setPrice(new java.math.BigDecimal("1.00"));
        assertEquals(0, written(list, out, (done, all, before) -> {}).before(), "other prices");
    }

    @Test
    void everythingThatResultsDependOnTellsWorkApart() throws IOException {
        Path list = list(LIST);
        List<byte[]> works = new ArrayList<>();
        works.add(BatchIdentity.of(SERVICE, task(), list).bytes());
        assertTrue(
                Arrays.equals(
                        works.get(0), BatchIdentity.of(SERVICE, task(), list).bytes()),
                "the same work");
        assertEquals(4, BatchIdentity.of(SERVICE, task(), list).dwellings());
        works.add(BatchIdentity.of(SERVICE, task(), list(LIST.replace("420", "421")))
                .bytes());
        list(LIST);
        works.add(BatchIdentity.of(TwinfeedService.onClassPath(), task(), list).bytes());
        works.add(BatchIdentity.of(
                        SERVICE,
                        new BatchTask(template, prices, FirmFile.none(), DemoBatch.DAY.plusDays(1), Locale.UK),
                        list)
                .bytes());
        works.add(BatchIdentity.of(
                        SERVICE, new BatchTask(template, prices, FirmFile.none(), DemoBatch.DAY, Locale.GERMANY), list)
                .bytes());
        Path firm = Files.createDirectory(folder.resolve("firm"));
        Files.writeString(firm.resolve("firm.properties"), "name=Netherquill (invented)\n");
        works.add(identity(firm, list));
        Files.writeString(firm.resolve("firm.properties"), "name=Other (invented)\n");
        works.add(identity(firm, list));
        Files.writeString(firm.resolve("standing-texts.properties"), "term.valid=Until {validUntil}.\n");
        works.add(identity(firm, list));
        for (String name : List.of("Netherquill (invented)", "Other (invented)")) {
            FirmFile head = new FirmFile(Firm.of(name, "", ""), null);
            works.add(BatchIdentity.of(SERVICE, task(head), list).bytes());
        }
        template.job().getSurvey().getUnit().setAge(9);
        works.add(BatchIdentity.of(SERVICE, task(), list).bytes());
        template.catalogue().getHeaters().get(0).setTitle("Another");
        works.add(BatchIdentity.of(SERVICE, task(), list).bytes());
        prices.setTitle("Spring");
        works.add(BatchIdentity.of(SERVICE, task(), list).bytes());
        assertEquals(
                works.size(), works.stream().map(Arrays::toString).distinct().count());
    }

    private byte[] identity(Path firm, Path list) throws IOException {
        return BatchIdentity.of(SERVICE, task(firm), list).bytes();
    }

    @Test
    void aListWithoutADwellingIsRefused() throws IOException {
        Path out = folder.resolve("out.csv");
        for (String text : List.of("dwelling,water.hardness\n", "dwelling\n\n## nobody\n")) {
            InputException empty =
                    assertThrows(InputException.class, () -> written(list(text), out, (done, all, before) -> {}));
            assertTrue(empty.getMessage().contains("list.csv"), empty.getMessage());
        }
        Path text = Files.writeString(folder.resolve("list.xlsx"), "no workbook");
        assertThrows(UnusableException.class, () -> written(text, out, (done, all, before) -> {}));
        Path nowhere = folder.resolve("nowhere.xlsx");
        InputException none =
                assertThrows(InputException.class, () -> written(nowhere, out, (done, all, before) -> {}));
        assertTrue(none.getMessage().contains("nowhere.xlsx: there is no such file"), none.getMessage());
        assertFalse(Files.exists(out));
        try (Stream<Path> left = Files.list(folder)) {
            assertTrue(left.noneMatch(each -> each.toString().endsWith(".judged")));
        }
    }

    @Test
    void aListIsReadFromAWorkbookToo() throws IOException {
        Path list = folder.resolve("list.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                var stream = Files.newOutputStream(list)) {
            XSSFSheet sheet = book.createSheet("List");
            sheet.createRow(0).createCell(0).setCellValue("dwelling");
            sheet.createRow(1).createCell(0).setCellValue("Sedge Row 1");
            book.write(stream);
        }
        assertEquals(
                1,
                written(list, folder.resolve("out.jsonl"), (done, all, before) -> {})
                        .judged());
    }

    @Test
    void theSurveyOfARowIsTheTemplatesWithItsOwnValues() throws IOException {
        Path list = list(LIST);
        BatchWriting writing = new BatchWriting(SERVICE, task());
        assertEquals(
                "420 mg/L", writing.survey(list, 7).getWater().getHardness().toString());
        assertThrows(InputException.class, () -> writing.survey(list, 4));
        assertThrows(InputException.class, () -> writing.survey(list, 2));
    }

    /** A safety check that the age of the unit decides: it fails from 30 years on, and is left open at 20. */
    private static TwinfeedService decidedByTheAge() {
        Check check = Check.of("made.safe", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
        return new TwinfeedService(List.of(new SyntheticCalculator("made-up", List.of(check), (survey, findings) -> {
            int age = survey.getUnit().getAge();
            if (age != 20) {
                findings.on(check).compare(age < 30 ? 1 : -1, 0).add();
            }
        })));
    }

    @Test
    void whatTheDwellingsHaveInCommonIsCounted() throws IOException {
        Path list = list(
                """
                dwelling,unit.age,symptoms
                Sedge Row 1,30,
                Sedge Row 2,20,
                Sedge Row 3,31,isolatorHot
                Sedge Row 4,4,
                Sedge Row 5,32,
                Sedge Row 6,20,
                Sedge Row 7,7,
                Sedge Row 8,8,
                Sedge Row 9,9,
                """);
        TwinfeedService service = decidedByTheAge();
        for (String out : List.of("out.csv", "out.xlsx")) {
            List<Integer> progress = new ArrayList<>();
            List<String> told = new ArrayList<>();
            BatchReport report = new BatchWriting(service, task())
                    .write(
                            list,
                            folder.resolve(out),
                            (done, all, before) -> progress.add(done),
                            dwelling -> told.add(dwelling.name()));
            assertEquals(9, report.judged());
            assertEquals(4, report.offered(), "not where it is unsafe, nor where a check is unanswered");
            assertEquals(2, report.estimates());
            assertEquals(2, report.unanswered());
            assertEquals(3, report.unsafe());
            assertEquals(1, report.complaints());
            assertEquals(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9), progress);
            assertEquals(9, told.size());
        }
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(folder.resolve("out.xlsx")))) {
            assertEquals(
                    9,
                    totals(book.getSheetAt(0), "Urgency"),
                    "every dwelling is in the totals: " + cells(book.getSheetAt(0)));
        }
    }

    /** How many dwellings the totals count in a group of lines. */
    private static int totals(XSSFSheet sheet, String group) {
        int counted = 0;
        for (org.apache.poi.ss.usermodel.Row row : sheet) {
            if (group.equals(String.valueOf(row.getCell(0)))) {
                counted += (int) row.getCell(2).getNumericCellValue();
            }
        }
        return counted;
    }

    /** A row that ends where the next begins, and the same text as one row. */
    @Test
    void rowsAreToldApartFromOneRowOfTheSameText() throws IOException {
        byte[] two = BatchIdentity.of(SERVICE, task(), list("dwelling,notes\na\nb\n"))
                .bytes();
        byte[] one = BatchIdentity.of(SERVICE, task(), list("dwelling,notes\na3,b\n"))
                .bytes();
        assertFalse(Arrays.equals(two, one));
    }

    /** The same wording counts for another language when its file gets another name. */
    @Test
    void wordingIsToldApartByItsTextAndItsLanguage() throws IOException {
        Path list = list(LIST);
        Path firm = Files.createDirectory(folder.resolve("firm"));
        Files.writeString(firm.resolve("firm.properties"), "name=Netherquill (invented)\n");
        Path english = Files.writeString(firm.resolve("standing-texts.properties"), "term.valid=Until {validUntil}.\n");
        byte[] before = identity(firm, list);
        Files.writeString(english, "term.valid=No longer than {validUntil}.\n");
        byte[] worded = identity(firm, list);
        assertFalse(Arrays.equals(before, worded));
        Files.move(english, firm.resolve("standing-texts_de.properties"));
        assertFalse(Arrays.equals(worded, identity(firm, list)));
    }

    /** Each line goes on where the line before ends, in either form. */
    @Test
    void aJsonObjectALineTellsEachRow() throws IOException {
        Path out = folder.resolve("out.jsonl");
        written(list(LIST), out, (done, all, before) -> {});
        List<String> lines = Files.readAllLines(out);
        assertEquals(4, lines.size());
        assertTrue(lines.get(3).contains("\"Sedge Row 3\""), lines.get(3));
        assertTrue(lines.stream().allMatch(line -> line.startsWith("{") && line.endsWith("}")), lines.toString());
    }

    /** Reading of the list is no work on it: where the disk or the result's folder fails, the file is named. */
    @Test
    void aResultInAFolderThatIsNotThereIsRefusedByItsName() throws IOException {
        Path list = list(LIST);
        Path out = folder.resolve("no folder/out.csv");
        UnusableException refused =
                assertThrows(UnusableException.class, () -> written(list, out, (done, all, before) -> {}));
        assertTrue(refused.getMessage().startsWith(out + ": "), refused.getMessage());
    }

    @Test
    void theWorkbookNamesListFirmAndDay() throws IOException {
        Path firm = Files.createDirectory(folder.resolve("firm"));
        Files.writeString(firm.resolve("firm.properties"), "name=Netherquill (invented)\naccent=00AA55\n");
        Path out = folder.resolve("out.xlsx");
        new BatchWriting(SERVICE, task(firm)).write(list(LIST), out, (done, all, before) -> {});
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(out))) {
            assertEquals(
                    "2026-11-29",
                    String.valueOf(book.getProperties()
                            .getCoreProperties()
                            .getCreated()
                            .toInstant()
                            .toString()
                            .substring(0, 10)));
            assertEquals(
                    "Netherquill (invented)",
                    book.getProperties().getCoreProperties().getCreator());
        }
    }

    /** No row can be priced then: the list is refused once, and not row by row. */
    @Test
    void aDayBeforeThePricesHoldIsRefused() throws IOException {
        Path list = list(LIST);
        Path out = folder.resolve("out.csv");
        BatchTask early = new BatchTask(
                template, prices, FirmFile.none(), prices.getDate().minusDays(1), Locale.UK);
        UnusableException refused = assertThrows(UnusableException.class, () -> new BatchWriting(SERVICE, early)
                .write(list, out, (done, all, before) -> {}));
        assertTrue(refused.getMessage().startsWith("the price book holds from"), refused.getMessage());
        assertFalse(Files.exists(out) || Files.exists(BatchJournal.beside(out)));
    }
}
