// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.io.InputException;
import twinfeed.model.rows.Row;

/** Every fault is refused with its row, its column and a sentence of its own. */
class PriceBookRefusalTest {
    private static final String GOOD = "a,A,each,,1.00,,,standard,,,,,,\n";

    private static RowRemark only(String text) throws IOException {
        List<RowRemark> refused = PriceBookCsvTest.read(text).refused();
        assertEquals(1, refused.size(), refused::toString);
        return refused.get(0);
    }

    private static void check(RowRemark refused, String column, String key) {
        assertEquals(key, refused.key());
        assertEquals(column, refused.column());
        assertFalse(refused.wrong().isBlank());
        assertFalse(refused.right(Locale.ROOT).isBlank());
        assertFalse(refused.message().matches(".*[{]\\d[}].*"), refused.message());
        assertTrue(refused.message().startsWith("book.csv"), refused.message());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "code,description|,A,each,,1.00,,,standard,,,,,,|code|blank",
                "x|a b,A,each,,1.00,,,standard,,,,,,|code|codeForm",
                "x|=1+1,A,each,,1.00,,,standard,,,,,,|code|codeForm",
                "x|a,,each,,1.00,,,standard,,,,,,|description|blank",
                "x|a,A,,,1.00,,,standard,,,,,,|unit|blank",
                "x|a,A,each,,1.00,,,,,,,,,|tax-class|blank",
                "x|a,A,each,,1.00,,,luxury,,,,,,|tax-class|notOneOf",
                "x|a,A,each,,1.00,,,reduced,,,,,,|tax-class|noRate",
                "x|a,A,each,,1.00,,,customer-accounts,,,,,,|tax-class|noRate",
                "x|a,A,each,,-0.01,,,standard,,,,,,|price|negative",
                "x|a,A,each,-5,1.00,,,standard,,,,,,|cost|negative",
                "x|a,A,each,,\"1,50\",,,standard,,,,,,|price|decimalComma",
                "x|a,A,each,,\"1,500.00\",,,standard,,,,,,|price|grouped",
                "x|a,A,each,,1 500.00,,,standard,,,,,,|price|grouped",
                "x|a,A,each,,£1.50,,,standard,,,,,,|price|notANumber",
                "x|a,A,each,,1e3,,,standard,,,,,,|price|notANumber",
                "x|a,A,each,,.5,,,standard,,,,,,|price|notANumber",
                "x|a,A,each,,NaN,,,standard,,,,,,|price|notANumber",
                "x|a,A,each,,1.00001,,,standard,,,,,,|price|tooManyDigits",
                "x|a,A,each,1.00,2.00,0.5,,standard,,,,,,|price|twoRules",
                "x|a,A,each,1.00,,0.5,0.5,standard,,,,,,|price|twoRules",
                "x|a,A,each,,,0.5,,standard,,,,,,|cost|ruleWithoutCost",
                "x|a,A,each,1.00,,,,standard,,,,,,|price|noRule",
                "x|a,A,each,1.00,,20,,standard,,,,,,|markup|ratioRange",
                "x|a,A,each,1.00,,,1,standard,,,,,,|margin|ratioRange",
                "x|a,A,each,1.00,,much,,standard,,,,,,|markup|notARatio",
                "x|a,A,each,,1.00,,,standard,,01/09/2026,,,,|date|notADate",
                "x|a,A,each,,1.00,,,standard,,2026-02-30,,,,|date|notADate",
                "x|a,A,each,,1.00,,,standard,,2026-9-1,,,,|date|notADate",
                "x|a,A,each,,1.00,,,standard,,,-5,,,|minutes|negative",
                "x|a,A,m,,1.00,,,standard,,,,0,,|whole-length|notPositive",
                "x|a,A,m,,1.00,,,standard,,,,,5,|waste|ratioRange",
                "x|a,A,m,,1.00,,,standard,,,,,,1.5|lead-days|notWhole",
            })
    void refusesACell(String unused, String row, String column, String key) throws IOException {
        RowRemark refused = only(PriceBookCsvTest.HEAD + row + "\n");
        check(refused, column, key);
        assertEquals(8, refused.row());
    }

    @Test
    void refusesTwoMillionRows(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("long.csv");
        try (var out = java.nio.file.Files.newBufferedWriter(file)) {
            for (int row = 0; row < 2_000_000; row++) {
                out.write("a\n");
            }
        }
        assertTrue(refused(file).contains("long.csv, line 50001: the list has more than 50000 rows"), refused(file));
        try (var out = java.nio.file.Files.newBufferedWriter(file)) {
            for (int row = 0; row < 2_000_000; row++) {
                out.write("a,A,each,,1.00\n");
            }
        }
        assertTrue(refused(file).contains("16 MiB"), refused(file));
    }

    private static String refused(Path file) {
        return String.valueOf(assertThrows(InputException.class, () -> PriceBookCsv.read(file))
                .getMessage());
    }

    @Test
    void refusesACellTooMany() throws IOException {
        check(only(PriceBookCsvTest.HEAD + "a,A,each,,1.00,,,standard,,,,,,,spilt\n"), "", "extraCell");
    }

    @Test
    void tellsAFaultOnceAndNotWhatFollowsFromIt() throws IOException {
        check(only(PriceBookCsvTest.HEAD + "a,A,each,1.00,x,,,standard,,,,,,\n"), "price", "notANumber");
    }

    @Test
    void refusesRowsShiftedByAnUnquotedComma() throws IOException {
        assertFalse(PriceBookCsvTest.read(PriceBookCsvTest.HEAD + "a,A,each,,1,50,,,standard,,,,,,\n")
                .refused()
                .isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "# title: Small book|## no title|title|headMissing",
                "# currency: GBP|## no currency|currency|headMissing",
                "# date: 2026-09-01|## no date|date|headMissing",
                "# labour-rate: 50.00|## no rate|labour-rate|headMissing",
                "# valid-days: 30|## no days|valid-days|headMissing",
                "# currency: GBP|# currency: pounds|currency|unknownCurrency",
                "# currency: GBP|# currency:|currency|headBlank",
                "# date: 2026-09-01|# date: 1.9.2026|date|notADate",
                "# labour-rate: 50.00|# labour-rate: fifty|labour-rate|notANumber",
                "# labour-rate: 50.00|# labour-rate: -50|labour-rate|negative",
                "# labour-rate: 50.00|# labour-rate: 0|labour-rate|labourFree",
                "# labour-rate: 50.00|# labour-rate: 0.00|labour-rate|labourFree",
                "# valid-days: 30|# valid-days: 30 days|valid-days|notWhole",
                "# title: Small book|# title: A;# title: B|title|headTwice",
                "# title: Small book|# title: A;# rounding: down|rounding|notOneOf",
                "# title: Small book|# title: A;# labour-tax-class: odd|labour-tax-class|notOneOf",
                "# title: Small book|# title: A;# labour-tax-class: reduced|labour-tax-class|noRate",
                "# title: Small book|# title: A;# contingency: 5|contingency|ratioRange",
                "# title: Small book|# title: A;# vat: 20|vat|unknownHead",
                "# title: Small book|# title: A;# payment: half,0.5|payment|paymentSum",
                "# title: Small book|# title: A;# translation: de,A|translation|translationForm",
                "# title: Small book|# title: A;# translation: German,A,B|translation|translationForm",
                "# title: Small book|# title: A;# payment: all|payment|paymentForm",
                "# title: Small book|# title: A;# payment: none,0;# payment: all,1|payment|paymentForm",
                "# title: Small book|# title: A;# tax-rate: standard,0.2|tax-rate|taxRateForm",
                "# title: Small book|# title: A;# tax-rate: zero,0,2011-01-04,,label,more|tax-rate|taxRateForm",
                "# title: Small book|# title: A;# tax-rate: zero,,2011-01-04|tax-rate|taxRateForm",
                "# title: Small book|# title: A;# tax-rate: zero,0,,2011-01-04|tax-rate|taxRateForm",
                "# title: Small book|# title: A;# markup: 11|markup|ratioRange",
                "# title: Small book|# title: A;# tax-rate: zero,0,2020-01-01,2019-01-01|tax-rate|taxRateEnds",
                "# title: Small book|# title: A;# tax-rate: standard,0.25,2030-01-01|tax-rate|taxRateOverlap",
            })
    void refusesAHeadLine(String line, String instead, String column, String key) throws IOException {
        String head = PriceBookCsvTest.HEAD.replace(line, instead.replace(";", "\n"));
        check(only(head + GOOD), column, key);
    }

    @Test
    void takesRatesThatFollowOneAnother() throws IOException {
        String head = PriceBookCsvTest.HEAD.replace("2011-01-04,,", "2011-01-04,2029-12-31,")
                + "# tax-rate: standard,0.25,2030-01-01\n";
        assertEquals(List.of(), PriceBookCsvTest.read(head + GOOD).refused());
    }

    @Test
    void takesSemicolonsAndTabsToo() throws IOException {
        for (String separator : List.of(";", "\t")) {
            String text = (PriceBookCsvTest.HEAD + GOOD).replace(",", separator);
            assertEquals(List.of(), PriceBookCsvTest.read(text).refused());
        }
    }

    @Test
    void refusesColumns() throws IOException {
        check(only(PriceBookCsvTest.HEAD.replace(",cost,", ",costs,") + GOOD), "costs", "unknownColumn");
        check(
                only(PriceBookCsvTest.HEAD.replace(",cost,", ",price,") + GOOD.replace(",,1.00", ",,")),
                "price",
                "columnTwice");
        check(
                only(PriceBookCsvTest.HEAD
                                .replace(",price,", ",note,")
                                .replace("note", "cost2")
                                .replace("cost2", "supplier")
                                .replace(",supplier,date", ",date")
                        + "a,A,each,,,,,standard,,,,,\n"),
                "price",
                "columnMissing");
        check(only(PriceBookCsvTest.HEAD), "", "noItems");
        check(only(PriceBookCsvTest.HEAD.substring(0, PriceBookCsvTest.HEAD.indexOf("code,"))), "", "noHeader");
    }

    @Test
    void aCellThatWouldColourTheScreenIsPrintedHarmlessly() throws IOException {
        RowRemark refused = only(PriceBookCsvTest.HEAD + "a,A,each,,1.00,,,\u001b[31m,,,,,,\n");
        assertEquals("tax-class", refused.column());
        assertFalse(refused.message().contains("\u001b"), refused.message());
    }

    @Test
    void ofManyFaultsTheFirstAreToldAndTheRestCounted() throws IOException {
        String row = "a b,A,each,,1.00,,,luxury,,,,,,\n";
        ImportReport report = PriceBookCsvTest.read(PriceBookCsvTest.HEAD + row.repeat(200));
        int faults = report.refused().size();
        assertTrue(faults >= 200, "faults: " + faults);
        PriceBookException refusal = assertThrows(PriceBookException.class, report::bookOrThrow);
        String message = String.valueOf(refusal.getMessage());
        List<String> lines = message.lines().toList();
        assertTrue(message.length() <= 2048, "characters: " + message.length());
        assertEquals(report.refused().get(0).message(), lines.get(0));
        int told = lines.size() - 1;
        assertTrue(lines.get(told).contains(String.valueOf(faults - told)), lines.get(told));
        assertEquals(faults, refusal.report().refused().size(), "the report names them all");
    }

    @Test
    void readsRowsOfAnySource() {
        List<Row> rows = List.of(
                new Row(1, List.of("# title:", "From a sheet")),
                new Row(2, List.of("# currency:", "GBP")),
                new Row(3, List.of("# date:", "2026-09-01")),
                new Row(4, List.of("# labour-rate:", "50")),
                new Row(5, List.of("# valid-days:", "30")),
                new Row(6, List.of("# tax-rate:", "standard", "0.2", "2011-01-04")),
                new Row(8, List.of("code", "description", "unit", "price", "tax-class")),
                new Row(9, List.of("a", "A", "each", "1.5", "standard")),
                new Row(12, List.of("b", "B", "each", "-1", "standard")));
        ImportReport report = PriceBookRows.read("prices.xlsx", rows);
        assertEquals(
                "prices.xlsx, row 12, price: -1 is negative",
                report.refused().get(0).message().split(";")[0]);
        assertTrue(PriceBookRows.read("prices.xlsx", rows.subList(0, 8)).book().isPresent());
    }
}
