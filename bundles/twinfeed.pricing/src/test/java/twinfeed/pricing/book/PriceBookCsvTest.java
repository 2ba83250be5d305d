// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.io.InputException;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.pricing.DemoBook;

class PriceBookCsvTest {
    static final String HEAD =
            """
            # title: Small book
            # currency: GBP
            # date: 2026-09-01
            # labour-rate: 50.00
            # valid-days: 30
            # tax-rate: standard,0.20,2011-01-04,,VAT 20 %
            code,description,unit,cost,price,markup,margin,tax-class,supplier,date,minutes,whole-length,waste,lead-days
            """;

    static ImportReport read(String text) throws IOException {
        return PriceBookCsv.read(new StringReader(text), "book.csv");
    }

    private static PriceItem only(String row) throws IOException {
        return read(HEAD + row).bookOrThrow().getItems().get(0);
    }

    @Test
    void priceThatHoldsUntilADayIsReadAndWritten() throws IOException {
        String head = HEAD.stripTrailing() + ",holds-until\n";
        PriceBook book = read(head + "a,A,each,,1.00,,,standard,,,,,,,2026-10-31\nb,B,each,,2.00,,,standard,,,,,,,\n")
                .bookOrThrow();
        assertEquals(LocalDate.of(2026, 10, 31), book.getItems().get(0).getHoldsUntil());
        assertEquals(null, book.getItems().get(1).getHoldsUntil());
        PriceBook again = read(PriceBookText.of(book)).bookOrThrow();
        assertTrue(BookComparison.compare(book, again).same());
        assertTrue(!PriceBookText.of(
                        read(HEAD + "b,B,each,,2.00,,,standard,,,,,,\n").bookOrThrow())
                .contains("holds-until"));
        assertEquals(
                "notADate",
                read(head + "a,A,each,,1.00,,,standard,,,,,,,October\n")
                        .refused()
                        .get(0)
                        .key());
    }

    @Test
    void readsTheDemonstrationBook() throws IOException {
        ImportReport report = PriceBookCsv.read(DemoBook.file());
        PriceBook book = report.bookOrThrow();
        assertEquals("Demonstration prices (invented)", book.getTitle());
        assertEquals("GBP", book.getCurrency());
        assertEquals(LocalDate.of(2026, 9, 1), book.getDate());
        assertEquals(new BigDecimal("54.00"), book.getLabourRate());
        assertEquals(new BigDecimal("29.50"), book.getLabourCost());
        assertEquals(60, book.getMinimumMinutes());
        assertEquals(30, book.getValidDays());
        assertEquals(0.05, book.getContingency().si(), 1e-12);
        assertEquals(4, book.getTaxRates().size());
        assertEquals(2, book.getPayments().size());
        assertEquals(book.getItems().size(), report.added().size());
        assertTrue(book.getNote().contains("Invented"));
        assertEquals(
                List.of("service-pipe", "operator-earth", "operator-fuse"),
                report.notices().stream()
                        .filter(notice -> notice.key().equals("onEnquiry"))
                        .map(notice -> notice.arguments().get(0))
                        .toList());
    }

    /** Codes that remedies ask for: the calculators and the price book have to agree on them. */
    @ParameterizedTest
    @CsvSource({
        "cable-6,m",
        "cable-10,m",
        "cable-16,m",
        "breaker-32,each",
        "breaker-40,each",
        "breaker-45,each",
        "breaker-50,each",
        "rcbo-32,each",
        "rcbo-40,each",
        "rcbo-45,each",
        "rcbo-50,each",
        "rcbo-60,each",
        "isolator-45,each",
        "isolator-50,each",
        "full-bore-valve,each",
        "pipe-15,m",
        "pipe-22,m",
        "pipe-fittings,each",
        "strainer-clean,each",
        "own-branch,each",
        "pressure-reducing-valve,each",
        "service-pipe,each",
        "break-tank-pump,each",
        "check-valve,each",
        "hose-retainer,each",
        "scale-inhibitor,each",
        "tails-25,each",
        "bonding-10,each",
        "earthing-16,each",
        "extra-way,each",
        "tails-enclosure,each",
        "rccb-delayed-100,each",
        "vehicle-load-management,each",
        "storage-time-switch,each",
        "task-move-isolator,each",
        "task-test-apart,each",
        "task-trace-joint,each",
        "task-test-supply,each",
        "main-branch,each",
        "consumer-unit,each",
        "priority-unit,each",
        "operator-earth,each",
        "operator-fuse,each",
        "lift-out-of-insulation,m",
        "clip-cable,m",
        "making-good,each",
        "electrode,each",
        "task-replace-unit,each",
        "task-run-cable,m",
        "task-change-device,each",
        "task-change-isolator,each",
        "task-pipework,each",
        "task-test-certify,visit",
        "task-isolate,visit",
        "travel,visit",
        "disposal,each",
        "notification,visit",
        "certificate,visit"
    })
    void demonstrationBookHasWhatRemediesAskFor(String code, String unit) {
        PriceItem item = DemoBook.read().getItems().stream()
                .filter(one -> one.getCode().equals(code))
                .findFirst()
                .orElseThrow();
        assertEquals(unit, item.getUnit());
    }

    @Test
    void readsQuotedCellsOverSeveralLines() throws IOException {
        PriceItem item = only("a,\"Valve, \"\"full\"\"\nbore\",each,,1.50,,,standard,,,,,,\n");
        assertEquals("Valve, \"full\"\nbore", item.getDescription());
    }

    @Test
    void leavesAbsentValuesUnset() throws IOException {
        PriceItem item = only("a,A,each,,0,,,standard,,,,,,\n");
        assertEquals(BigDecimal.ZERO, item.getPrice());
        assertNull(item.getCost());
        assertNull(item.getMinutes());
        assertNull(item.getDate());
        assertNull(item.getSupplier());
        assertNull(item.getLeadDays());
        assertNull(item.getWaste());
    }

    @Test
    void takesColumnsInAnyOrderAndShortRows() throws IOException {
        String head = HEAD.substring(0, HEAD.indexOf("code,"));
        ImportReport report = read(head + "Price,Tax class,unit,CODE,description\n2.50,standard,each,a,A\n");
        assertEquals(
                new BigDecimal("2.50"), report.bookOrThrow().getItems().get(0).getPrice());
    }

    @Test
    void toleratesAByteOrderMarkAndWindowsLines(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("mark.csv");
        String text = "\ufeff" + (HEAD + "a,Überlauf,each,,1.00,,,standard,,,,,,\n").replace("\n", "\r\n");
        Files.writeString(file, text);
        assertEquals(
                "Überlauf",
                PriceBookCsv.read(file).bookOrThrow().getItems().get(0).getDescription());
    }

    @Test
    void takesHeadLinesThatASpreadsheetSpreadOverCells() throws IOException {
        String spread = HEAD.replace("# title: Small book", "# title: Small book,,,,,,,")
                .replace("# labour-rate: 50.00", "# labour-rate:,50.00,,,,,");
        PriceBook book = read(spread + "a,A,each,,1.00,,,standard,,,,,,\n").bookOrThrow();
        assertEquals("Small book", book.getTitle());
        assertEquals(new BigDecimal("50.00"), book.getLabourRate());
    }

    @Test
    void takesPaymentsTermsAndExclusions() throws IOException {
        String more =
                "# payment: on acceptance,0.3\n# payment: on completion,70 %\n# term: Keys at the office, please\n"
                        + "\"# exclusion: Scaffolding, parking\"\n## currency: a remark\n# just a remark\n";
        PriceBook book = read(more + HEAD + "a,A,each,,1.00,,,standard,,,,,,\n").bookOrThrow();
        assertEquals("on acceptance", book.getPayments().get(0).getTitle());
        assertEquals(List.of("Keys at the office, please"), book.getTerms());
        assertEquals(List.of("Scaffolding, parking"), book.getExclusions());
    }

    @Test
    void countsRowsAsTheFileShowsThem() throws IOException {
        String rows = "a,\"two\nlines\",each,,1.00,,,standard,,,,,,\n\nb,B,each,,-1,,,standard,,,,,,\n";
        RowRemark refused = read(HEAD + rows).refused().get(0);
        // Seven rows of head, two of a, one blank.
        assertEquals(11, refused.row());
        assertEquals(
                "book.csv, row 11, price: -1 is negative; write 0 or more; a discount is given in the quote",
                refused.message());
    }

    @Test
    void refusesTheWholeBookForOneRowAndListsEveryFault() throws IOException {
        String rows = "a,A,each,,1.00,,,standard,,,,,,\nb,,each,,x,,,odd,,,,,,\nA,A,each,,1.00,,,standard,,,,,,\n";
        ImportReport report = read(HEAD + rows);
        assertTrue(report.book().isEmpty());
        assertEquals(List.of("a"), report.added());
        assertEquals(
                List.of("8: blank", "8: notANumber", "8: notOneOf", "9: codeTwice"),
                report.refused().stream()
                        .map(one -> (one.row() - 1) + ": " + one.key())
                        .sorted()
                        .toList());
        PriceBookException thrown = assertThrows(PriceBookException.class, report::bookOrThrow);
        assertTrue(thrown.getMessage().contains("book.csv, row 10, code: the code A stands in row 8 already"));
        assertEquals(4, thrown.report().refused().size());
    }

    @Test
    void takesWhatAnOlderSpreadsheetProgramSaved(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("older.csv");
        String text = (HEAD + "a,\u00dcberlauf,each,,1.50,,,standard,,,,,,\n")
                .replace(',', ';')
                .replace("1.50", "1,50");
        Files.write(file, text.getBytes(java.nio.charset.Charset.forName("windows-1252")));
        PriceItem item = PriceBookCsv.read(file).bookOrThrow().getItems().get(0);
        assertEquals("\u00dcberlauf", item.getDescription());
        assertEquals(new BigDecimal("1.50"), item.getPrice());
    }

    @Test
    void refusesAQuoteThatDoesNotClose() {
        for (String row : List.of("a,\"A,each,,1.00,,,standard,,,,,,\n", "a,\"A\"x,each,,1,,,standard\n")) {
            InputException refused = assertThrows(InputException.class, () -> read(HEAD + row));
            assertTrue(refused.getMessage().startsWith("book.csv, line 8: a double quote"), refused.getMessage());
        }
    }

    @Test
    void namesAFileThatIsNotThere(@TempDir Path folder) {
        InputException refused =
                assertThrows(InputException.class, () -> PriceBookCsv.read(folder.resolve("none.csv")));
        assertTrue(refused.getMessage().contains("none.csv: there is no such file"), refused.getMessage());
    }

    @Test
    void writesWhatItReads() throws IOException {
        PriceBook book = DemoBook.read();
        book.getTerms().add("A term, with \"quotes\"");
        book.getItems().get(0).setDescription("Two\nlines, \"quoted\"");
        PriceBook again = read(PriceBookText.of(book)).bookOrThrow();
        assertTrue(BookComparison.compare(book, again).same(), () -> BookComparison.compare(book, again)
                .toString());
        assertFalse(BookComparison.compare(DemoBook.read(), again).same());
    }

    @Test
    void writesEveryLineOfTheHeadAndEveryCellThatItReads() throws IOException {
        String text = HEAD.replace(
                        "# valid-days: 30\n",
                        """
                        # valid-days: 30
                        # note: Invented for a test
                        # labour-cost: 20.00
                        # labour-tax-class: zero
                        # minimum-minutes: 60
                        # energy-price: 0.30
                        # contingency: 5 %
                        # rounding: total-by-rate
                        # markup: 25 %
                        # tax-rate: zero,0,2011-01-04
                        # payment: on acceptance,30 %
                        # payment: on completion,70 %
                        # term: Keys at the office
                        # exclusion: Parking
                        # translation: de,Keys at the office,Die Schlüssel liegen im Büro
                        """)
                + "a,Elbow,each,1.00,2.00,,,standard,Cedar (invented),2026-08-30,5,3,10 %,2\n"
                + "b,Bend,each,1.00,,20 %,,standard,,,,,,\n"
                + "c,Tee,each,1.00,,,0.3,zero,,,,,,\n";
        PriceBook book = read(text).bookOrThrow();
        assertEquals("total-by-rate", book.getRounding());
        assertEquals(0.25, book.getMarkup().si(), 1e-12);
        assertEquals(
                "Die Schlüssel liegen im Büro", book.getTranslations().get(0).getText());
        assertEquals("Cedar (invented)", book.getItems().get(0).getSupplier());
        assertEquals(LocalDate.of(2026, 8, 30), book.getItems().get(0).getDate());
        PriceBook again = read(PriceBookText.of(book)).bookOrThrow();
        assertTrue(EcoreUtil.equals(book, again), () -> PriceBookText.of(book));
    }

    /** A price of 1.0 is one of 1.00, a quarter is 25 %; a list differs where one of its lines does. */
    @Test
    void comparesValuesAndNotHowTheyAreWritten() throws IOException {
        PriceBook before = read(HEAD + "a,A,each,1.00,,25 %,,standard,,,,,,\n").bookOrThrow();
        PriceBook same = read(HEAD + "a,A,each,1.0,,0.25,,standard,,,,,,\n").bookOrThrow();
        assertTrue(BookComparison.compare(before, same).same());
        PriceBook after = read("# payment: all,100 %\n# term: One\n# term: Two\n" + HEAD
                        + "a,A,each,1.01,,26 %,,standard,,,,,,\n")
                .bookOrThrow();
        assertEquals(
                List.of("terms/One; Two", "payments/all 100 %", "cost/1.01", "markup/26 %"),
                BookComparison.compare(before, after).changed().stream()
                        .map(change -> change.field() + "/" + change.after())
                        .toList());
        PriceBook later = read(HEAD.replace("2011-01-04", "2012-01-04") + "a,A,each,1.00,,25 %,,standard,,,,,,\n")
                .bookOrThrow();
        assertEquals(
                "taxRates",
                BookComparison.compare(before, later).changed().get(0).field());
    }

    @Test
    void comparesTwoBooks() {
        PriceBook before = DemoBook.read();
        PriceBook after = DemoBook.read();
        after.getItems().get(0).setPrice(new BigDecimal("127.00"));
        after.getItems().get(1).setCode("h86");
        after.setLabourRate(new BigDecimal("55.00"));
        after.getTaxRates().remove(1);
        BookComparison comparison = BookComparison.compare(before, after);
        assertEquals(List.of("h86"), comparison.added());
        assertEquals(List.of("h85"), comparison.removed());
        assertEquals(
                List.of("labourRate 54.00 55.00", "price 126.00 127.00"),
                comparison.changed().stream()
                        .filter(change -> !change.field().equals("taxRates"))
                        .map(change -> change.field() + " " + change.before() + " " + change.after())
                        .toList());
        assertEquals(3, comparison.changed().size());
        assertEquals("h75", comparison.changed().get(2).code());
    }

    @Test
    void saysItInAnotherLanguageOrElseInEnglish() throws IOException {
        RowRemark refused =
                read(HEAD + "a,A,each,,-1,,,standard,,,,,,\n").refused().get(0);
        assertEquals(refused.message(), refused.message(Locale.JAPANESE));
    }
}
