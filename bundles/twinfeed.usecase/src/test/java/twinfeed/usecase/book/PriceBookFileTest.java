// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.io.InputException;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.Demo;
import twinfeed.usecase.TwinfeedService;

/** A price book that is being changed. */
final class PriceBookFileTest {
    private static final Path BOOK = Demo.FOLDER.resolve("prices.csv");

    private static PriceBook book() {
        return TwinfeedService.onClassPath().book(BOOK);
    }

    @Test
    void demonstrationHasNothingWrong() {
        assertTrue(PriceBookFile.check(book(), Locale.UK).stream().noneMatch(PriceBookFile.Remark::error));
    }

    @Test
    void whatIsWrongIsSaidAtItsItemAndValue() {
        PriceBook book = book();
        book.getItems().get(3).setDescription(null);
        book.getItems().get(5).setCode(book.getItems().get(2).getCode());
        book.getItems().get(7).setTaxClass("luxury");
        book.setTitle(null);
        List<String> wrong = PriceBookFile.check(book, Locale.UK).stream()
                .filter(PriceBookFile.Remark::error)
                .map(one -> one.item() + " " + one.field())
                .sorted()
                .toList();
        assertEquals(List.of("-1 title", "3 description", "5 code", "7 taxClass"), wrong);
    }

    @Test
    void bookIsWrittenWithItsRemarksAndReadsTheSame(@TempDir Path folder) throws Exception {
        PriceBook book = book();
        book.getItems().get(0).setPrice(new BigDecimal("123.45"));
        Path out = folder.resolve("prices.csv");
        PriceBookFile.save(book, out, BOOK);
        PriceBook again = TwinfeedService.onClassPath().book(out);
        assertTrue(EcoreUtil.equals(book, again));
        List<String> remarks = Files.readAllLines(BOOK).stream()
                .filter(line -> line.startsWith("##"))
                .toList();
        assertEquals(remarks, Files.readAllLines(out).subList(0, remarks.size()));
    }

    @Test
    void bookWithAFaultIsNotWritten(@TempDir Path folder) {
        PriceBook book = book();
        book.getItems().get(3).setUnit(null);
        Path out = folder.resolve("prices.csv");
        InputException refused = assertThrows(InputException.class, () -> PriceBookFile.save(book, out, BOOK));
        assertTrue(refused.getMessage().contains(book.getItems().get(3).getCode()), refused.getMessage());
        assertFalse(Files.exists(out));
    }

    @Test
    void needsOfCalculatorsThatTheBookLacksAreNamed() {
        PriceBook book = book();
        TwinfeedService service = TwinfeedService.onClassPath();
        assertFalse(lacking(service, book).contains("cable-10"));
        int before = lacking(service, book).size();
        book.getItems().removeIf(item -> item.getCode().equals("cable-10"));
        assertTrue(lacking(service, book).contains("cable-10"));
        assertEquals(before + 1, lacking(service, book).size());
    }

    private static List<String> lacking(TwinfeedService service, PriceBook book) {
        return service.lacking(book).stream()
                .flatMap(one -> one.codes().stream())
                .toList();
    }

    @Test
    void whatMayBeChosenIsWhatAFileMayHold() {
        PriceBook book = book();
        for (String taxClass : PriceBookFile.taxClasses()) {
            book.getItems().get(0).setTaxClass(taxClass);
            assertTrue(
                    PriceBookFile.check(book, Locale.UK).stream()
                            .noneMatch(one -> one.error() && one.field().equals("taxClass")),
                    taxClass);
        }
        assertTrue(PriceBookFile.taxClasses().contains("standard"));
        for (String rounding : PriceBookFile.roundings()) {
            book.setRounding(rounding);
            assertTrue(PriceBookFile.check(book, Locale.UK).stream().noneMatch(PriceBookFile.Remark::error), rounding);
        }
        assertTrue(PriceBookFile.roundings().size() > 1);
    }

    @Test
    void aRemarkSaysWhatIsWrongAndWhatWouldBeRight() {
        PriceBook book = book();
        book.getItems().get(7).setTaxClass("luxury");
        String text = PriceBookFile.check(book, Locale.UK).stream()
                .filter(PriceBookFile.Remark::error)
                .findFirst()
                .orElseThrow()
                .text();
        assertTrue(text.contains("; ") && text.contains("standard"), text);
    }

    @Test
    void theFirstItemIsNamedToo(@TempDir Path folder) {
        PriceBook book = book();
        book.getItems().get(0).setUnit(null);
        Path out = folder.resolve("prices.csv");
        InputException refused = assertThrows(InputException.class, () -> PriceBookFile.save(book, out, BOOK));
        assertTrue(
                refused.problems()
                        .get(0)
                        .element()
                        .startsWith(book.getItems().get(0).getCode() + " "),
                refused.getMessage());
    }

    /** Spreadsheet programs of some systems still write this encoding. */
    @Test
    void remarksInAnOlderEncodingAreKept(@TempDir Path folder) throws Exception {
        Path older = folder.resolve("older.csv");
        Files.write(older, "## Preise f\u00fcr 2026\nx\n".getBytes(java.nio.charset.Charset.forName("windows-1252")));
        Path out = folder.resolve("prices.csv");
        PriceBookFile.save(book(), out, older);
        assertEquals("## Preise f\u00fcr 2026", Files.readAllLines(out).get(0));
    }

    @Test
    void aBookIsWrittenAsCsvOnly(@TempDir Path folder) {
        Path out = folder.resolve("prices.xlsx");
        assertThrows(InputException.class, () -> PriceBookFile.save(book(), out, BOOK));
        assertFalse(Files.exists(out));
    }
}
