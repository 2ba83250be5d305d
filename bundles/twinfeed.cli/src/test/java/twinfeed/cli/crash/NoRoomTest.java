// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.crash;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.usecase.quote.FolderCheck;
import twinfeed.usecase.quote.IssuedQuotes;

/**
 * There is no room, or no right to write: a message, and nothing lost. A limit on the size of a file that the system sets a program
 * ({@code ulimit -f}) refuses a write half-way, as a full disk and a quota do.
 */
class NoRoomTest {
    /** Room for every file that a quote makes. */
    private static final int PLENTY_KIB = 4_000;

    @TempDir
    private Path folder;

    private Office office = new Office(Path.of(""));

    private record Ended(int status, String said) {}

    @BeforeEach
    void furnish() throws IOException {
        office = Office.in(folder);
    }

    /** Runs a verb that may write no file of more than some KiB. */
    private static Ended limited(int kib, List<String> options, Object... words) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                "bash",
                "-c",
                "ulimit -f " + kib + "; exec \"$@\"",
                "limited",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-Djava.awt.headless=true"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), OneRun.class.getName()));
        Stream.of(words).map(Object::toString).forEach(command::add);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(process.waitFor(), said);
    }

    private List<String> leftovers() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(".part"))
                    .toList();
        }
    }

    private static void assertRefused(Ended ended, String file) {
        assertTrue(ended.status() == 2 || ended.status() == 3, ended.toString());
        assertTrue(ended.said().contains(file), ended.said());
        assertFalse(ended.said().contains("Exception"), ended.said());
        assertFalse(ended.said().contains("\tat "), ended.said());
    }

    @Test
    void aWorkbookForWhichThereIsNoRoomIsNotBegun() throws Exception {
        Files.writeString(office.workbook(), "an older workbook");
        Ended ended =
                limited(40, List.of(), "quote", office.job(), "--book", office.prices(), "--out", office.workbook());
        assertRefused(ended, "quote.xlsx");
        assertEquals("an older workbook", Files.readString(office.workbook()));
        assertEquals(List.of(), leftovers());
    }

    @Test
    void aJobForWhichThereIsNoRoomStaysTheOldOne() throws Exception {
        byte[] before = Files.readAllBytes(office.job());
        Ended ended = limited(
                4,
                List.of(),
                "faults",
                office.job(),
                "--answer",
                "isolatorHot=no",
                "--by",
                "A. Tester",
                "--at",
                "2026-11-25 09:40");
        assertRefused(ended, "alder-beck.job");
        assertArrayEquals(before, Files.readAllBytes(office.job()));
        assertEquals(List.of(), leftovers());
    }

    /** Whatever comes of it, no number is burnt in silence: what was issued is named and whole. */
    @Test
    void aQuoteIsIssuedAndNamedOrNotIssued() throws Exception {
        for (int kib : new int[] {8, 100, PLENTY_KIB}) {
            Ended ended = limited(
                    kib,
                    List.of(),
                    "quote",
                    office.job(),
                    "--book",
                    office.prices(),
                    "--issue",
                    office.quotes(),
                    "--out",
                    folder.resolve(kib + ".xlsx"));
            FolderCheck found = Files.exists(office.quotes())
                    ? IssuedQuotes.verify(office.quotes())
                    : new FolderCheck(true, List.of(), List.of());
            assertTrue(found.sound(), kib + " KiB: " + found + ended.said());
            for (FolderCheck.Quote quote : found.quotes()) {
                assertTrue(ended.said().contains(quote.name()), quote + " is not named: " + ended.said());
            }
            assertEquals(kib == PLENTY_KIB ? 0 : 2, ended.status(), kib + " KiB: " + ended.said());
        }
        assertEquals(List.of(), leftovers());
    }

    @Test
    void aPlaceWhereNothingCanBeWrittenIsNamed() throws Exception {
        Ended ended = limited(
                10_000, List.of(), "quote", office.job(), "--book", office.prices(), "--out", "/proc/quote.xlsx");
        assertRefused(ended, "/proc/quote.xlsx");
    }

    @Test
    void neitherHomeNorTemporaryFolderIsNeeded() throws Exception {
        List<String> nowhere = List.of("-Djava.io.tmpdir=/proc/none", "-Duser.home=/proc/none");
        Path pdf = folder.resolve("quote.pdf");
        Ended ended = limited(
                10_000,
                nowhere,
                "quote",
                office.job(),
                "--book",
                office.prices(),
                "--out",
                office.workbook(),
                "--pdf",
                pdf);
        assertEquals(0, ended.status(), ended.said());
        assertTrue(Files.size(pdf) > 0 && Files.size(office.workbook()) > 0);
    }
}
