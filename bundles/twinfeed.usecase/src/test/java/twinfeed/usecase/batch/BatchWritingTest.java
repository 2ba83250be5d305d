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
import twinfeed.model.io.InputException;
import twinfeed.model.pricebook.PriceBook;
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
        return new BatchTask(template, prices, FirmFile.none(), DemoBatch.DAY, Locale.UK);
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
        return BatchIdentity.of(
                        SERVICE,
                        new BatchTask(
                                template,
                                prices,
                                FirmFile.beside(firm.resolve("prices.csv")),
                                DemoBatch.DAY,
                                Locale.UK),
                        list)
                .bytes();
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
        assertThrows(InputException.class, () -> written(nowhere, out, (done, all, before) -> {}));
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
}
