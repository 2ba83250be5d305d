// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.usecase.TwinfeedService;

/** Files that anybody may have written: what is wrong is named in a line, and nothing reaches further. */
@Timeout(120)
class HostileInputTest extends DemoFolder {
    @BeforeEach
    void copyDemo() throws IOException {
        copy("alder-beck-loft.jpg");
    }

    private void change(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertTrue(text.contains(from), from);
        Files.writeString(file, text.replace(from, to));
    }

    private static void refused(Run run, String message) {
        assertEquals(2, run.status(), run.err());
        assertTrue(run.err().contains(message), run.err());
        assertTrue(run.err().length() < 2_000, run.err().length() + " letters");
        assertFalse(run.err().contains("\tat "), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/dev/zero", "/dev/null", "PIPE"})
    void devicesAndPipesAreNoFiles(String name) throws Exception {
        Path device = Path.of(name);
        if (name.equals("PIPE")) {
            device = folder.resolve("pipe.job");
            assertEquals(
                    0, new ProcessBuilder("mkfifo", device.toString()).start().waitFor());
        }
        String message = "a device, a pipe or the like";
        refused(Run.of("assess", device), message);
        refused(Run.of("assess", job, "--catalogue", device), message);
        refused(Run.of("options", job, "--book", device), message);
        refused(Run.of("book", device), message);
        refused(Run.of("verify", device), message);
        refused(Run.of("compare", device, device), message);
        Path out = folder.resolve("out.xlsx");
        refused(Run.of("quote", job, "--book", book, "--out", out, "--firm", device), message);
        refused(Run.of("batch", device, "--template", job, "--book", book, "--out", out), message);
        assertFalse(Files.exists(out));
    }

    @ParameterizedTest
    @CsvSource({
        "key=\"goesColdWhenTapOpens\", key=\"goesColdWhenTabOpens\", did you mean goesColdWhenTapOpens?",
        "key=\"goesColdWhenTapOpens\", key=\"banana\", survey.symptoms[1].key \"banana\"",
        "fittings kind=\"elbow-soldered\", fittings kind=\"frog\", \"frog\": this word is not known here",
        "fittings kind=\"elbow-soldered\", fittings kind=\"elbow-soldred\", did you mean elbow-soldered?"
    })
    void wordsThatNobodyKnowsAreRefusedWithTheNearest(String from, String to, String message) throws IOException {
        change(job, from, to);
        refused(Run.of("assess", job), message);
    }

    @Test
    void unknownDevicesAndReferenceMethodsAreRefusedToo() throws IOException {
        String text = Files.readString(job);
        Files.writeString(job, text.replaceFirst("<device kind=\"[^\"]*\"", "<device kind=\"banana\""));
        refused(Run.of("assess", job), "device.kind \"banana\"");
        Files.writeString(job, text.replaceFirst(" method=\"[^\"]*\"", " method=\"Z9\""));
        refused(Run.of("assess", job), ".method \"Z9\"");
    }

    @Test
    void anUnknownKeyOfAFirmIsNamed() throws IOException {
        Path firm = Files.writeString(folder.resolve("firm.properties"), "nmae=Invented\n");
        Run run = Run.of("quote", job, "--book", book, "--out", folder.resolve("q.xlsx"), "--firm", firm);
        refused(run, "nmae: there is no such key; did you mean name?");
    }

    @Test
    void aPictureThatIsNotThereIsNamed() throws IOException {
        Files.delete(folder.resolve("alder-beck-loft.jpg"));
        Run run = Run.of("assess", job, "--brief");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.err().contains("alder-beck-loft.jpg\": there is no such file"), run.err());
    }

    @Test
    void aPictureBehindALinkOutOfTheFolderIsNotShown() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Files.move(job, inner.resolve("alder-beck.job"));
        Files.copy(folder.resolve("heaters.catalogue"), inner.resolve("heaters.catalogue"));
        Files.createSymbolicLink(inner.resolve("alder-beck-loft.jpg"), folder.resolve("alder-beck-loft.jpg"));
        Path out = folder.resolve("q.xlsx");
        Run run = Run.of("quote", inner.resolve("alder-beck.job"), "--book", book, "--out", out);
        assertEquals(0, run.status(), run.err());
        assertTrue(run.err().contains("it is no file in the job's folder"), run.err());
        try (var stream = Files.newInputStream(out);
                var workbook = new org.apache.poi.xssf.usermodel.XSSFWorkbook(stream)) {
            assertEquals(0, workbook.getAllPictures().size());
        }
    }

    @Test
    void escapesAndOverridesNeverReachTheTerminal() throws IOException {
        change(book, "\ncable-10,", "\nesc\u001b[31m\u202eevil,x,each,1,abc,,,standard,,,,,,\ncable-10,");
        Run run = Run.of("book", book);
        assertEquals(2, run.status());
        assertFalse(run.err().matches("(?s).*[\u001b\u202e].*"), run.err());
        assertTrue(run.err().contains("evil"), run.err());
    }

    @Test
    void aLineThatAnItemBeginsByItselfIsSetIn() throws IOException {
        change(book, "\ncable-10,", "\n\"a\ninternal fault: forged\",x,each,1,abc,,,standard,,,,,,\ncable-10,");
        Run run = Run.of("book", book);
        assertTrue(run.err().lines().noneMatch(line -> line.startsWith("internal fault")), run.err());
    }

    @Test
    void aPriceListIsWrittenWithoutFormulas() throws IOException {
        change(book, "\ncable-10,", "\nlure,'=cmd|calc,each,1.00,,,,standard,,,,,,\ncable-10,");
        String list = Files.readString(book);
        Files.writeString(book, list.replace("lure,'=cmd|calc,each,1.00,,", "lure,'=cmd|calc,each,,1.00,"));
        Path out = folder.resolve("out.csv");
        Run run = Run.of("book", book, "--out", out);
        assertEquals(0, run.status(), run.err());
        String written = Files.readString(out);
        assertTrue(written.contains("lure,'=cmd|calc"), written);
        assertTrue(java.util.regex.Pattern.compile("(^|,)\"?[=+@]", java.util.regex.Pattern.MULTILINE)
                .matcher(written)
                .results()
                .findAny()
                .isEmpty());
        assertTrue(Run.of("book", out, "--against", book).out().contains("can be used"));
    }

    @Test
    void aThousandFaultsAreToldInTwoThousandLetters() throws IOException {
        StringBuilder rows = new StringBuilder("\n");
        for (int i = 0; i < 1000; i++) {
            rows.append("x").append(i).append(",x,each,1,abc,,,standard,,,,,,\n");
        }
        change(book, "\ncable-10,", rows + "cable-10,");
        refused(Run.of("options", job, "--book", book), "more; --json names them all");
    }

    @Test
    void aClosedOutputIsToldInASentence() {
        PrintStream closed = new PrintStream(new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("Broken pipe");
            }
        });
        java.io.ByteArrayOutputStream err = new java.io.ByteArrayOutputStream();
        int status = new Verbs(
                        TwinfeedService.onClassPath(),
                        Run.DAY,
                        closed,
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run("plugins");
        assertEquals(3, status);
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("standard output is closed or full"), err.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "1e999", "-1e400", "0x1p3", "1e99999999"})
    void numbersAreFiniteOrRefused(String number) throws IOException {
        Run calc = Run.of("calc", "flow", "power=" + number + "kW", "intake=5C", "outlet=40C");
        assertEquals(2, calc.status(), calc.out());
        change(job, "staticPressure=\"3.0 bar", "staticPressure=\"" + number + " bar");
        refused(Run.of("assess", job), "staticPressure");
    }
}
