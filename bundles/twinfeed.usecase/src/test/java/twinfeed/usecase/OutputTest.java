// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.workbook.text.WorkbookException;

/** A slip of the keyboard must not cost a survey or a price book, and what is written appears whole or not at all. */
final class OutputTest {
    @TempDir
    private Path folder;

    private Path input;

    @BeforeEach
    void input() throws IOException {
        input = Files.writeString(folder.resolve("house.pdf"), "a survey");
    }

    private void refused(Path out) {
        assertThrows(InputException.class, () -> OutputCheck.check(out, ".pdf", List.of(input)));
    }

    @Test
    void anInputIsNeverReplacedByWhateverNameOrLink() throws IOException {
        refused(input);
        refused(folder.resolve("sub/../house.pdf"));
        Path link = Files.createSymbolicLink(folder.resolve("link.pdf"), input);
        refused(link);
        OutputCheck.check(folder.resolve("other.pdf"), ".pdf", List.of(input));
    }

    @Test
    void anInputThatIsNotThereIsNoneThatCouldBeLost() throws IOException {
        Files.delete(input);
        OutputCheck.check(input, ".pdf", List.of(input));
    }

    @Test
    void theNameSaysTheKind() {
        refused(folder.resolve("other.txt"));
        OutputCheck.check(folder.resolve("OTHER.PDF"), ".pdf", List.of());
        OutputCheck.check(folder.resolve("other.csv"), List.of(".xlsx", ".csv"), List.of());
        InputException wrong = assertThrows(
                InputException.class,
                () -> OutputCheck.check(folder.resolve("other.txt"), List.of(".xlsx", ".csv"), List.of()));
        assertTrue(wrong.getMessage().contains(".xlsx, .csv"), wrong.getMessage());
        InputException one = assertThrows(
                InputException.class, () -> OutputCheck.check(folder.resolve("other.txt"), ".xlsx", List.of()));
        assertTrue(one.getMessage().contains(".xlsx"), one.getMessage());
    }

    @Test
    void aLinkLeadsToAFileOfItsOwnKind() throws IOException {
        Path table = Files.writeString(folder.resolve("prices.csv"), "prices");
        Path link = Files.createSymbolicLink(folder.resolve("quote.pdf"), table);
        InputException refused =
                assertThrows(InputException.class, () -> OutputCheck.check(link, ".pdf", List.of(input)));
        assertTrue(refused.getMessage().contains("prices.csv"), refused.getMessage());
        Path report = Files.writeString(folder.resolve("report.pdf"), "report");
        OutputCheck.check(Files.createSymbolicLink(folder.resolve("last.pdf"), report), ".pdf", List.of(input));
    }

    @Test
    void aFolderIsNoFile() throws IOException {
        refused(Files.createDirectory(folder.resolve("folder.pdf")));
    }

    @Test
    void everyFileOfAQuoteIsCheckedByItsKind() {
        Path workbook = folder.resolve("q.xlsx");
        Path pdf = folder.resolve("q.pdf");
        Path ubl = folder.resolve("q.xml");
        OutputPaths right = new OutputPaths(workbook, pdf).withUbl(ubl);
        right.check();
        assertEquals(List.of(workbook, pdf, ubl), right.files());
        assertEquals(List.of(pdf), OutputPaths.pdf(pdf).files());
        for (OutputPaths wrong : List.of(
                OutputPaths.workbook(pdf),
                OutputPaths.pdf(workbook),
                OutputPaths.pdf(pdf).withUbl(workbook))) {
            assertThrows(InputException.class, wrong::check);
        }
    }

    @Test
    void inputsAreSparedWhoeverNamesThem() {
        @Nullable Path none = null;
        OutputPaths paths = OutputPaths.pdf(input).sparing(none, folder.resolve("x.job"), input);
        assertEquals(List.of(folder.resolve("x.job"), input), paths.inputs());
        assertThrows(InputException.class, paths::check);
        OutputPaths more = paths.sparing(List.of(folder.resolve("y.job")));
        assertEquals(3, more.inputs().size());
        assertEquals(paths.files(), more.files());
        assertThrows(InputException.class, more.withUbl(null)::check);
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void allFilesAppearOrNone() throws IOException {
        OutputFiles files =
                new OutputFiles().add(null, out -> out.write(1)).add(folder.resolve("a.txt"), out -> out.write('a'));
        Files.createDirectories(folder.resolve("c.txt/in the way"));
        files.add(folder.resolve("c.txt"), out -> out.write('c'));
        assertThrows(InputException.class, files::write);
        assertFalse(Files.exists(folder.resolve("a.txt")));
    }

    private RuntimeException notMade(OutputFiles.Writing first, OutputFiles.Writing second) throws IOException {
        OutputFiles files =
                new OutputFiles().add(folder.resolve("a.txt"), first).add(folder.resolve("b.txt"), second);
        RuntimeException failed = assertThrows(RuntimeException.class, files::write);
        assertEquals(List.of("house.pdf"), left(), "nothing touches the disk before all are made");
        return failed;
    }

    @Test
    void whicheverFileCannotBeMadeKeepsAllFromTheDisk() throws IOException {
        OutputFiles.Writing good = out -> out.write('a');
        OutputFiles.Writing bad = out -> {
            throw new IOException("no picture");
        };
        assertEquals(
                folder.resolve("a.txt") + ": no picture", notMade(bad, good).getMessage());
        assertEquals(
                folder.resolve("b.txt") + ": no picture", notMade(good, bad).getMessage());
        IllegalStateException broken = new IllegalStateException("broken");
        assertSame(broken, notMade(good, out -> {
            throw broken;
        }));
        OutputFiles tooMuch = new OutputFiles()
                .add(folder.resolve("a.txt"), good)
                .add(folder.resolve("b.txt"), out -> {
                    throw new OutOfMemoryError("too much");
                });
        assertEquals(
                "too much", assertThrows(OutOfMemoryError.class, tooMuch::write).getMessage());
    }

    /** Each is done only when the other has begun. */
    @Test
    void filesAreMadeSideBySide() throws IOException {
        CountDownLatch begun = new CountDownLatch(2);
        OutputFiles.Writing together = out -> {
            begun.countDown();
            try {
                if (!begun.await(30, TimeUnit.SECONDS)) {
                    throw new IOException("the other has not begun");
                }
            } catch (InterruptedException stopped) {
                throw new IOException(stopped);
            }
            out.write('x');
        };
        new OutputFiles()
                .add(folder.resolve("a.txt"), together)
                .add(folder.resolve("b.txt"), together)
                .write();
        assertEquals(List.of("a.txt", "b.txt", "house.pdf"), left());
    }

    @Test
    void twoFilesInOnePlaceAreRefused() {
        OutputFiles files = new OutputFiles().add(folder.resolve("a.txt"), out -> out.write('a'));
        UnusableException twice = assertThrows(
                UnusableException.class, () -> files.add(folder.resolve("sub/../a.txt"), out -> out.write('b')));
        assertTrue(twice.getMessage().contains("a.txt"), twice.getMessage());
    }

    @Test
    void roomIsTakenAndGivenBack() throws IOException {
        OutputFiles files = new OutputFiles().add(folder.resolve("a.txt"), out -> out.write('a'));
        try (var staged = files.reserve()) {
            assertFalse(Files.exists(folder.resolve("a.txt")));
            assertTrue(taken() > 1 << 16, "bytes taken beside the files: " + taken());
            files.writeTo(staged);
        }
        assertEquals("a", Files.readString(folder.resolve("a.txt")));
        new OutputFiles()
                .add(folder.resolve("b.txt"), out -> out.write('b'))
                .reserve()
                .close();
        assertEquals(List.of("a.txt", "house.pdf"), left());
        OutputFiles nowhere = new OutputFiles().add(folder.resolve("house.pdf/x.txt"), out -> out.write('x'));
        assertThrows(InputException.class, nowhere::reserve);
    }

    /** Bytes of what lies in the folder but for the files with names of their own. */
    private long taken() throws IOException {
        long bytes = 0;
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                bytes +=
                        Set.of("a.txt", "house.pdf").contains(file.getFileName().toString()) ? 0 : Files.size(file);
            }
        }
        return bytes;
    }

    @Test
    void whatIsWrongWithAWorkbookIsToldInTwoHalves() {
        Path list = folder.resolve("sub/list.xlsx");
        UnusableException refused =
                ListProblem.of(list, new WorkbookException("noWorkbook", Map.of("file", "list.xlsx")));
        assertEquals(1, refused.problems().size());
        InputProblem problem = refused.problems().get(0);
        assertEquals(list.toString(), problem.file());
        assertEquals("no workbook", problem.wrong());
        assertEquals("save it as .xlsx, or give a .csv file its ending", problem.right());
        InputProblem plain = ListProblem.of(list, new WorkbookException("noSheet", Map.of("file", "other.xlsx")))
                .problems()
                .get(0);
        assertEquals("other.xlsx: the workbook has no sheet", plain.wrong());
        assertEquals("", plain.right());
    }

    @Test
    void aLanguageIsOneOfThoseWithTexts() {
        assertEquals(Locale.forLanguageTag("de-AT"), Languages.of("de_AT"));
        assertEquals(Locale.ENGLISH, Languages.of("en"));
        InputException refused = assertThrows(InputException.class, () -> Languages.of("fr"));
        assertTrue(refused.getMessage().contains("en, de"), refused.getMessage());
    }

    @Test
    void aQuantityIsWrittenAsATradespersonWritesIt() {
        QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
        line.setQuantity(new BigDecimal("0.8333"));
        line.setUnit("h");
        assertEquals("50 min", LineQuantity.of(line, Locale.UK).replace('\u00a0', ' '));
    }

    private static String version(String resource) throws IOException {
        return ProgramVersion.of(new ByteArrayInputStream(resource.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void theVersionIsThatOfTheBuild() throws IOException {
        assertEquals("1.2.3", version("version=1.2.3\n"));
        assertEquals("development", version("version=${revision}\n"), "not filled in");
        assertEquals("development", version("# nothing\n"));
        assertFalse(ProgramVersion.read().isEmpty());
    }
}
