// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A slip of the keyboard costs no survey, no price book and no issued quote. */
class OutputSafetyTest extends DemoFolder {
    @BeforeEach
    void copyDemo() throws IOException {
        copy("dwellings.csv");
        copy("firm.properties");
        copy("alder-beck-loft.jpg");
        try (Stream<Path> logos = Files.list(Run.DEMO)) {
            for (Path logo :
                    logos.filter(one -> one.toString().endsWith(".png")).toList()) {
                Files.copy(logo, folder.resolve(logo.getFileName()));
            }
        }
    }

    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(
                        folder.relativize(file).toString(), java.util.Arrays.hashCode(Files.readAllBytes(file)) + "");
            }
        }
        return contents;
    }

    private void refused(Object... words) throws IOException {
        Map<String, String> before = contents();
        Run run = Run.of(words);
        assertEquals(2, run.status(), run.err());
        assertEquals("", run.out());
        assertEquals(before, contents());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "alder-beck.job",
                "prices.csv",
                "heaters.catalogue",
                "firm.properties",
                "alder-beck-loft.jpg",
                "dwellings.csv",
                "./alder-beck.job"
            })
    void aQuoteReplacesNoInput(String name) throws IOException {
        Path out = folder.resolve(name);
        refused("quote", job, "--book", book, "--out", out);
        refused("quote", job, "--book", book, "--out", folder.resolve("q.xlsx"), "--pdf", out);
        refused("faults", job, "--out", out);
        refused("faults", job, "--pdf", out);
        refused("batch", folder.resolve("dwellings.csv"), "--template", job, "--book", book, "--out", out);
    }

    @ParameterizedTest
    @ValueSource(strings = {"alder-beck.job", "prices.csv", "heaters.catalogue"})
    void aLinkWithARightEndingDoesNotReplaceItEither(String name) throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), folder.resolve(name));
        refused("quote", job, "--book", book, "--out", link);
        refused("batch", folder.resolve("dwellings.csv"), "--template", job, "--book", book, "--out", link);
    }

    @Test
    void aPriceListIsNotWrittenOverItself() throws IOException {
        refused("book", book, "--out", book);
        refused("book", folder.resolve("dwellings.csv"), "--against", book, "--out", book);
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), book);
        refused("book", book, "--out", link);
    }

    @Test
    void aListThatIsAWorkbookIsNotReplacedByItsResult() throws IOException {
        Path list = folder.resolve("list.xlsx");
        assertEquals(0, Run.of("quote", job, "--book", book, "--out", list).status());
        refused("batch", list, "--template", job, "--book", book, "--out", list);
    }

    @Test
    void whatIsNoRegularFileIsLeftAlone() throws IOException {
        refused("quote", job, "--book", book, "--out", Files.createDirectory(folder.resolve("folder.xlsx")));
        Path device = Files.createSymbolicLink(folder.resolve("device.xlsx"), Path.of("/dev/null"));
        refused("quote", job, "--book", book, "--out", device);
        assertTrue(Files.isSymbolicLink(device));
    }

    @Test
    void anIssuedQuoteIsNeverReplaced() throws IOException {
        Path office = folder.resolve("office");
        Path out = folder.resolve("q.xlsx");
        assertEquals(
                0,
                Run.of("quote", job, "--book", book, "--out", out, "--issue", office)
                        .status());
        Path issued = office.resolve("quotes/2026-0001-r1.quote");
        byte[] before = Files.readAllBytes(issued);
        refused("quote", job, "--book", book, "--out", issued);
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), issued);
        refused("quote", job, "--book", book, "--out", link);
        assertArrayEquals(before, Files.readAllBytes(issued));
    }

    @Test
    void aWriteProtectedFileIsLeftAloneByAnAdministratorToo() throws IOException {
        Path out = Files.writeString(folder.resolve("kept.xlsx"), "kept");
        assertTrue(out.toFile().setReadOnly());
        refused("quote", job, "--book", book, "--out", out);
    }

    @Test
    void noNumberIsTakenWhereTheWorkbookCannotBeWritten() throws IOException {
        Path office = folder.resolve("office");
        refused("quote", job, "--book", book, "--out", folder.resolve("no/such/q.xlsx"), "--issue", office);
        refused("quote", job, "--book", book, "--out", job, "--issue", office);
        assertFalse(Files.exists(office));
    }

    @Test
    void whatIsIssuedIsNamed() throws IOException {
        Path office = folder.resolve("office");
        Run run = Run.of("quote", job, "--book", book, "--out", folder.resolve("q.xlsx"), "--issue", office, "--json");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.err().contains("Issued: 2026-0001-r1 "), run.err());
        assertTrue(run.out().contains("2026-0001-r1.quote"), run.out());
    }

    @Test
    void answersOfSeveralAtOnceAreAllKept() throws Exception {
        String[] keys = {"noHotWater", "tripsRcd", "noFlow", "burntSmell"};
        List<String> known = new ArrayList<>();
        Run listed = Run.of("faults", job, "--answer", "nothing=yes", "--by", "A", "--at", "2026-10-06 09:40");
        for (String key : listed.err().replaceAll("(?s).*name one of ", "").split(", ")) {
            known.add(key.strip());
        }
        List<Thread> threads = new ArrayList<>();
        List<Run> runs = java.util.Collections.synchronizedList(new ArrayList<>());
        for (int i = 0; i < keys.length; i++) {
            String key = known.get(i);
            Thread thread = new Thread(() -> runs.add(
                    Run.of("faults", job, "--answer", key + "=unknown", "--by", "A", "--at", "2026-10-06 09:40")));
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            thread.join();
        }
        assertTrue(runs.stream().allMatch(run -> run.status() == 0), runs.toString());
        String saved = Files.readString(job);
        for (int i = 0; i < keys.length; i++) {
            assertTrue(saved.contains("key=\"" + known.get(i) + "\""), known.get(i));
        }
    }

    @Test
    void verifiesAFileAndAFolder() throws IOException {
        Path office = folder.resolve("office");
        for (int i = 0; i < 2; i++) {
            assertEquals(
                    0,
                    Run.of("quote", job, "--book", book, "--out", folder.resolve("q.xlsx"), "--issue", office)
                            .status());
        }
        Path first = office.resolve("quotes/2026-0001-r1.quote");
        assertEquals(0, Run.of("verify", office).status());
        assertEquals(0, Run.of("verify", first).status());
        assertTrue(first.toFile().setWritable(true));
        Files.writeString(first, Files.readString(first).replace("GBP", "EUR"));
        Run changed = Run.of("verify", first);
        assertEquals(1, changed.status());
        assertTrue(changed.out().contains("changed since it was issued"), changed.out());
        Run compared = Run.of("compare", first, office.resolve("quotes/2026-0002-r1.quote"), "--json");
        assertEquals(1, compared.status());
        assertTrue(compared.out().contains("\"unchanged\" : false"), compared.out());
        Files.delete(first);
        Run missing = Run.of("verify", office);
        assertEquals(1, missing.status());
        assertTrue(missing.out().contains("2026-0001: the number was taken"), missing.out());
        assertEquals(2, Run.of("verify", folder.resolve("nowhere")).status());
    }
}
