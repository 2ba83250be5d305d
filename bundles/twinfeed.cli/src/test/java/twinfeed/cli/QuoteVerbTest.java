// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class QuoteVerbTest extends DemoFolder {
    private Path out;

    @BeforeEach
    void copyDemo() throws IOException {
        out = folder.resolve("quote.xlsx");
    }

    private Run quote() {
        return Run.of("quote", job, "--book", book, "--out", out, "--date", "2026-11-25");
    }

    @Test
    void theDemonstrationLeavesAWorkbook() throws IOException {
        Run run = quote();
        assertEquals(0, run.status(), run.err());
        byte[] bytes = Files.readAllBytes(out);
        assertEquals("PK", new String(bytes, 0, 2, StandardCharsets.US_ASCII));
        assertTrue(run.out().contains("GBP"), run.out());
        assertTrue(run.out().contains("Invented"), "the demonstration's prices say that they are invented");
        assertTrue(run.out().contains("Caution"), run.out());
    }

    /** A firm may not notice that its book lacks a cable: then a thicker one is quoted, and both verbs and the workbook say why. */
    @Test
    void aPriceThatTheBookLacksIsNamed() throws IOException {
        String lacking = "The price book “Demonstration prices (invented)” lacks cable-10;";
        assertFalse(quote().out().contains("lacks"));
        Files.writeString(
                book,
                Files.readAllLines(book).stream()
                        .filter(line -> !line.startsWith("cable-10,"))
                        .collect(Collectors.joining("\n")));
        Run run = quote();
        assertTrue(run.out().contains(lacking), run.out());
        assertTrue(Run.of("assess", job, "--book", book, "--brief").out().contains("- " + lacking));
        StringBuilder sheets = new StringBuilder();
        try (ZipFile zip = new ZipFile(out.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                if (entry.getName().endsWith(".xml")) {
                    sheets.append(new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        assertTrue(sheets.toString().contains(lacking));
    }

    @Test
    void whatRulesNothingOutIsNotMarkedAsAFailure() {
        String out = Run.of("assess", job).out();
        assertTrue(Run.of("assess", job, "--brief").out().length() < out.length() / 2, "without workings");
        assertTrue(out.contains("[ >] Likeliest cause: "), out);
        assertTrue(out.contains("[NO] Capacity of the cable: "), out);
    }

    /** A smell of burning is what somebody says, not what a check finds: the quote and the job sheet begin with it all the same. */
    @Test
    void aReportedSmellOfBurningIsADanger() throws IOException {
        job = copy("rowan-brook.job");
        assertFalse(quote().out().contains("DANGER"));
        String text = Files.readString(job);
        Files.writeString(job, text.replaceFirst("<water ", "<symptoms key=\"smellAtUnit\"/>\n    <water "));
        String said = quote().out();
        assertTrue(said.startsWith("DANGER: the shower must not be used"), said);
        assertTrue(said.contains("[NO] The shower smells burnt"), said);
        assertTrue(said.contains("written by the verb notice"), said);
        assertEquals(0, Run.of("notice", job).status(), "that verb knows of it");
        assertTrue(Run.of("faults", job).out().contains("it stays off, with the breaker off and locked"));
    }

    @Test
    void theSameInputGivesTheSameBytes() throws IOException {
        quote();
        byte[] first = Files.readAllBytes(out);
        quote();
        assertArrayEquals(first, Files.readAllBytes(out));
    }

    @Test
    void theDemonstrationShowsARealDecision() {
        Run run = Run.of("options", job, "--book", book);
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains(": suits with work"), run.out());
        assertTrue(run.out().contains("work: "), run.out());
    }

    @Test
    void strictTellsScriptsOfAFailure() {
        assertEquals(1, Run.of("assess", job, "--strict", "--brief").status());
        assertEquals(0, Run.of("assess", job, "--brief").status(), "nobody asked");
        Run suits = Run.of("options", Run.DEMO.resolve("rowan-brook.job"), "--strict");
        assertEquals(
                0, suits.status(), "every candidate suits; what the present unit fails does not count: " + suits.out());
    }

    private static UnaryOperator<String> replacing(String old, String fresh) {
        return text -> {
            assertTrue(text.contains(old), "the demonstration has no " + old);
            return text.replace(old, fresh);
        };
    }

    static Stream<Arguments> unusable() {
        return Stream.of(
                Arguments.of("job", replacing("<survey", "<surwey"), "surwey"),
                Arguments.of("job", (UnaryOperator<String>) text -> "not XML", "alder-beck.job"),
                Arguments.of("job", (UnaryOperator<String>) text -> "", "alder-beck.job"),
                Arguments.of("job", replacing("version=\"1\"", "version=\"99\""), "version"),
                Arguments.of("job", replacing("length=\"3.6 m ± 0.2 m\"", "length=\"-3.6 m\""), "length"),
                Arguments.of(
                        "job", replacing("runningPressure=\"1.8 bar", "runningPressure=\"3.8 bar"), "runningPressure"),
                Arguments.of(
                        "job",
                        replacing("<survey ", "<survey climate=\"uk-mains\" annualMeanAir=\"10 °C\" "),
                        "survey.climate"),
                Arguments.of("job", replacing("<survey ", "<survey annualMeanAir=\"10 °C\" "), "monthlyAirSpread"),
                Arguments.of("job", replacing("staticPressure=\"3.0 bar", "staticPressure=\"3.0 baar"), "baar"),
                Arguments.of("job", replacing("<candidates>h105<", "<candidates>h999<"), "h999"),
                Arguments.of(
                        "job",
                        replacing("<job:Job", "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><job:Job"),
                        "document type"),
                Arguments.of("job", replacing("heaters.catalogue", "nowhere.catalogue"), "nowhere.catalogue"));
    }

    @ParameterizedTest
    @MethodSource("unusable")
    void aJobThatCannotBeUsedIsRefusedInOneLineAndNothingIsWritten(
            String what, UnaryOperator<String> change, String named) throws IOException {
        Files.writeString(job, change.apply(Files.readString(job)));
        refused(quote(), named);
    }

    @Test
    void aMissingJobIsRefused() throws IOException {
        Files.delete(job);
        refused(quote(), "alder-beck.job");
    }

    @Test
    void aPriceBookWithABrokenRowIsRefusedWhole() throws IOException {
        String text = Files.readString(book);
        int line = text.indexOf("\ncable-10,");
        assertTrue(line > 0, "the demonstration's book has cable-10");
        Files.writeString(
                book,
                text.substring(0, line) + "\nbroken-row,x,each,1.00,abc,,,standard,,2026-09-01,,,,"
                        + text.substring(line));
        Run run = quote();
        refused(run, "prices.csv");
    }

    @Test
    void aPriceBookThatIsNotThereIsRefused() throws IOException {
        Files.delete(book);
        refused(quote(), "prices.csv");
    }

    @Test
    void aFolderThatIsNotThereIsNotMade() {
        Run run = Run.of("quote", job, "--book", book, "--out", folder.resolve("no/such/quote.xlsx"));
        assertEquals(2, run.status(), run.err());
        assertFalse(Files.exists(folder.resolve("no")));
    }

    private void refused(Run run, String named) throws IOException {
        assertEquals(2, run.status(), run.err());
        assertEquals("", run.out());
        assertTrue(run.err().contains(named), run.err());
        assertTrue(run.err().lines().count() <= 3, run.err());
        assertFalse(Files.exists(out));
        try (Stream<Path> files = Files.list(folder)) {
            assertTrue(
                    files.allMatch(file -> file.toString().matches(".*\\.(job|csv|catalogue|xlsx)")),
                    "something is left behind");
        }
    }

    @Test
    void picturesBesideTheJobAreInTheBookAndNoOthers() throws IOException {
        copy("alder-beck-loft.jpg");
        assertEquals(0, quote().status());
        assertEquals(1, pictures());
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Files.move(folder.resolve("heaters.catalogue"), inner.resolve("heaters.catalogue"));
        String outside = Files.readString(job).replace("alder-beck-loft.jpg", "../alder-beck-loft.jpg");
        job = Files.writeString(inner.resolve("alder-beck.job"), outside);
        assertEquals(0, quote().status());
        assertEquals(0, pictures(), "a name that leads out of the folder opens nothing");
    }

    private int pictures() throws IOException {
        try (var stream = Files.newInputStream(out);
                var book = new org.apache.poi.xssf.usermodel.XSSFWorkbook(stream)) {
            return book.getAllPictures().size();
        }
    }

    /** A survey of August, prices from September on, a quote in November; and a quote that is dated before its prices. */
    @Test
    void aSurveyMayBeOlderThanThePricesAndAQuoteMayNot(@TempDir Path folder) throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        String survey = Files.readString(Run.DEMO.resolve("rowan-brook.job"));
        Path job = Files.writeString(
                folder.resolve("august.job"), survey.replace("takenOn=\"2026-10-07\"", "takenOn=\"2026-08-07\""));
        Path book = Run.DEMO.resolve("prices.csv");
        for (String verb : List.of("options", "faults")) {
            Run run = Run.of(verb, job, "--book", book);
            assertEquals(0, run.status(), verb + ": " + run.err());
        }
        Run quote = Run.of("quote", job, "--book", book, "--out", folder.resolve("quote.xlsx"));
        assertEquals(0, quote.status(), quote.err());
        Run early = Run.of("quote", job, "--book", book, "--out", folder.resolve("early.xlsx"), "--date", "2026-08-31");
        assertEquals(2, early.status(), early.err());
        assertTrue(early.err().contains("the price book holds from 2026-09-01"), early.err());
        assertFalse(Files.exists(folder.resolve("early.xlsx")));
    }
}
