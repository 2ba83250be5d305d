// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.InputException;
import twinfeed.model.rows.CsvRows;
import twinfeed.model.rows.Row;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.batch.BatchTask;
import twinfeed.usecase.batch.RowJudge;

/** A first file is one that the program reads, and takes no other file's place. */
final class NewFilesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();

    private final NewFiles files = new NewFiles(SERVICE, DAY);

    @TempDir
    private Path folder;

    @Test
    void aNewJobOpensBesideANewCatalogue() {
        Path catalogue = folder.resolve(NewFiles.HEATERS);
        assertEquals(List.of(catalogue), files.write(FileKind.CATALOGUE, catalogue));
        Path job = folder.resolve("house.job");
        assertEquals(List.of(job), files.write(FileKind.JOB, job));
        assertEquals("heaters.catalogue", SERVICE.open(job, null).job().getCatalogue());
        Catalogue read = CatalogueFile.load(catalogue);
        assertEquals(DAY, read.getDate());
        assertFalse(read.getTitle().isBlank() || read.getNote().isBlank());
        assertEquals("8.5 kW", read.getHeaters().get(0).getPower().toString());
        assertEquals("240 V", read.getHeaters().get(0).getVoltage().toString());
        assertFalse(read.getHeaters().get(0).getTitle().isBlank());
    }

    @Test
    void aNewPriceBookHasPricesOfToday() throws IOException {
        Path book = folder.resolve("prices.csv");
        assertEquals(List.of(book), files.write(FileKind.PRICE_BOOK, book));
        assertEquals(DAY, SERVICE.book(book).getDate());
        assertTrue(Files.readString(book).endsWith("\n"));
    }

    @Test
    void theColumnsOfANewListAreThoseThatAListMayHave() {
        Path list = folder.resolve("dwellings.csv");
        assertEquals(List.of(list), files.write(FileKind.DWELLINGS, list));
        List<Row> rows = new ArrayList<>();
        CsvRows.read(list, 100, 1, rows::add);
        List<Row> read = rows.stream().filter(row -> !row.head()).toList();
        assertEquals(2, read.size(), "the columns and a first dwelling");
        Row head = read.get(0);
        assertEquals(List.of("dwelling", "symptoms"), head.cells().subList(0, 2));
        assertTrue(head.cells().contains("water.test.staticPressure"), head.toString());
        assertTrue(head.cells().stream().noneMatch(cell -> cell.contains("[")), "no tables");
        assertFalse(read.get(1).cells().get(0).isBlank());
        Path book = Demo.FOLDER.resolve("prices.csv");
        RowJudge judge = new RowJudge(
                SERVICE,
                new BatchTask(
                        SERVICE.open(Demo.FOLDER.resolve("rowan-brook.job"), null),
                        SERVICE.book(book),
                        FirmFile.none(),
                        DAY,
                        Locale.UK),
                "dwellings.csv",
                head);
        assertTrue(judge.csv(new Row(2, List.of("Mill Row 2")), 0).startsWith("2,Mill Row 2,judged"));
        List<Row> remarks = rows.stream().filter(Row::head).toList();
        assertEquals(3, remarks.size(), "meaning, unit and example");
        remarks.forEach(row -> assertEquals(head.cells().size(), row.cells().size()));
        int pressure = head.cells().indexOf("water.test.staticPressure");
        assertEquals("bar", remarks.get(1).cells().get(pressure));
        assertTrue(remarks.get(2).cells().get(pressure).endsWith(" bar"), "an example");
    }

    @Test
    void aNewFirmIsReadAsOne() throws IOException {
        Path firm = folder.resolve("firm");
        List<Path> written = files.write(FileKind.FIRM, firm);
        assertEquals(4, written.size());
        assertTrue(written.stream().allMatch(Files::isRegularFile));
        FirmFile read = FirmFile.beside(firm.resolve("prices.csv"));
        assertFalse(read.firm().name().isBlank());
        String text = Files.readString(firm.resolve(FirmFile.NAME));
        FirmFile.keys().stream()
                .filter(key -> !key.equals("name"))
                .forEach(key -> assertTrue(text.contains("\n#" + key + "=\n"), key));
        assertThrows(InputException.class, () -> files.write(FileKind.FIRM, firm));
    }

    @Test
    void noFileIsReplacedAndNoneIsCalledWhatItIsNot() throws IOException {
        for (FileKind kind : List.of(FileKind.JOB, FileKind.CATALOGUE, FileKind.PRICE_BOOK, FileKind.DWELLINGS)) {
            Path wrong = folder.resolve("file.txt");
            assertThrows(InputException.class, () -> files.write(kind, wrong));
            assertFalse(Files.exists(wrong));
        }
        Path there = Files.writeString(folder.resolve("prices.csv"), "mine");
        assertThrows(InputException.class, () -> files.write(FileKind.PRICE_BOOK, there));
        assertThrows(InputException.class, () -> files.write(FileKind.DWELLINGS, there));
        assertEquals("mine", Files.readString(there));
        Path quote = folder.resolve("x.quote");
        assertThrows(IllegalArgumentException.class, () -> files.write(FileKind.QUOTE, quote));
    }

    @Test
    void kindsAreFoundByTheirNames() {
        assertEquals(FileKind.DWELLINGS, FileKind.of("dwellings", FileKind.keys()));
        assertEquals(List.of("job", "catalogue", "price-book", "dwellings", "firm"), FileKind.begunKeys());
        InputException near = assertThrows(InputException.class, () -> FileKind.of("dwelling", FileKind.begunKeys()));
        assertTrue(near.getMessage().contains("dwellings"), near.getMessage());
        assertThrows(InputException.class, () -> FileKind.of("quote", FileKind.begunKeys()));
    }

    private static List<String> page(FileKind kind) {
        return new FileGuide(SERVICE, Locale.ROOT).page(kind);
    }

    @Test
    void aPageSaysHowEachReadingIsWritten() {
        List<String> job = page(FileKind.JOB);
        String pressure = job.stream()
                .filter(line -> line.startsWith("  staticPressure  ("))
                .findFirst()
                .orElseThrow();
        assertTrue(pressure.matches(".*bar.*kPa.*"), pressure);
        assertTrue(pressure.indexOf("bar") < pressure.indexOf("kPa"), "the unit in which it is asked for comes first");
        assertTrue(
                job.stream().anyMatch(line -> line.startsWith("  takenOn  (") && line.contains("YYYY-MM-DD")), "a day");
        assertTrue(
                job.stream().anyMatch(line -> line.startsWith("  earthing  (") && line.contains("TN-C-S")),
                "words of a closed list");
        assertTrue(
                job.stream().anyMatch(line -> line.startsWith("  kind  (") && line.contains("breaker-b")),
                "words that the rule set knows");
        assertTrue(
                job.stream().anyMatch(line -> line.equals("        breaker-b \u2013 circuit-breaker, type B")),
                "with what they mean");
        assertEquals(
                job.stream()
                        .filter(line -> line.startsWith("PipeSegment \u2013 "))
                        .count(),
                1,
                "each part once");
        assertTrue(job.stream().anyMatch(line -> line.startsWith("  segments  (") && line.contains("CableSegment")));
    }

    @Test
    void thePriceBooksPageHasItsHeadAndColumns() {
        List<String> book = page(FileKind.PRICE_BOOK);
        for (String name : List.of(
                "  # title:",
                "  # labour-rate:",
                "  # tax-rate:",
                "  # term:",
                "  code",
                "  tax-class",
                "  whole-length")) {
            assertTrue(
                    book.stream().anyMatch(line -> line.startsWith(name + "  (") || line.equals(name)),
                    name + " in " + book);
        }
        assertTrue(book.stream().anyMatch(line -> line.startsWith("        tax-class: ")), "the cells of a tax rate");
        assertTrue(book.stream().noneMatch(line -> line.contains("# item")), "items have columns");
    }

    @Test
    void theListsPageNamesEveryColumn() {
        List<String> list = page(FileKind.DWELLINGS);
        for (String name : List.of(
                "dwelling", "symptoms", "water.test.staticPressure", "electricity.circuit.segments[1].length")) {
            assertTrue(
                    list.stream().anyMatch(line -> line.startsWith("  " + name + "  (") || line.equals("  " + name)),
                    name);
        }
    }
}
