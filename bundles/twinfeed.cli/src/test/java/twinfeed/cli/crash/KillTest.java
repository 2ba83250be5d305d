// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.crash;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.io.JobFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.quote.FolderCheck;
import twinfeed.usecase.quote.IssuedQuotes;

/**
 * Programs that write are killed at random moments, as by a power cut, and run at once in one folder. {@code -Dtwinfeed.kills=300}
 * and {@code -Dtwinfeed.writers=20} make a campaign of it.
 */
class KillTest {
    private static final int KILLS = Integer.getInteger("twinfeed.kills", 4);
    private static final int WRITERS = Integer.getInteger("twinfeed.writers", 3);
    private static final int LONGEST_LIFE_MS = 1_500;

    @TempDir
    private Path folder;

    private final Set<String> issued = new HashSet<>();
    private final List<String> twice = new ArrayList<>();

    private static Process start(Office office, long seed, int steps) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        WritingLoop.class.getName(),
                        office.folder().toString(),
                        String.valueOf(seed),
                        String.valueOf(steps))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /** Takes what a program says until it is ready, or all of it. */
    private void listen(BufferedReader lines, boolean untilReady) throws IOException {
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (line.startsWith("issued ") && !issued.add(line)) {
                twice.add(line);
            }
            if (untilReady && line.equals("ready")) {
                return;
            }
        }
    }

    private static BufferedReader reader(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    @Test
    void whateverIsKilledEveryFileIsWhole() throws Exception {
        Office office = Office.in(folder);
        Random random = new Random(20261128);
        for (int kill = 0; kill < KILLS; kill++) {
            Process process = start(office, kill, Integer.MAX_VALUE);
            try (BufferedReader lines = reader(process)) {
                listen(lines, true);
                assertTrue(process.isAlive(), "it writes until it is killed");
                TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST_LIFE_MS));
                // By its handle: the process itself would close the stream in which the last numbers issued still
                // stand.
                process.toHandle().destroyForcibly();
                process.waitFor();
                listen(lines, false);
            }
            check(office);
        }
        assertEquals(List.of(), twice);
        // The next program that writes in a folder clears what the killed ones left in it.
        Process last = start(office, 1, 12);
        try (BufferedReader lines = reader(last)) {
            listen(lines, false);
        }
        assertEquals(0, last.waitFor());
        assertEquals(List.of(), leftovers());
        check(office);
        System.out.println(KILLS + " kills, " + issued.size() + " quotes issued");
    }

    private List<String> leftovers() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(".part"))
                    .toList();
        }
    }

    @Test
    void severalAtOnceInOneFolderKeepEverything() throws Exception {
        Office office = Office.in(folder);
        List<Process> processes = new ArrayList<>();
        for (int i = 0; i < WRITERS; i++) {
            processes.add(start(office, 1000 + i, 12));
        }
        for (Process process : processes) {
            try (BufferedReader lines = reader(process)) {
                listen(lines, false);
            }
            assertEquals(0, process.waitFor());
        }
        assertEquals(List.of(), twice);
        assertEquals(List.of(), leftovers());
        assertTrue(issued.size() >= WRITERS, issued.toString());
        FolderCheck found = check(office);
        assertEquals(issued.size(), found.quotes().size());
        assertTrue(found.sound(), found.toString());
    }

    private FolderCheck check(Office office) throws IOException {
        for (Path job : List.of(office.job(), office.unsaved())) {
            if (Files.exists(job)) {
                String note = String.valueOf(JobFile.load(job).getSurvey().getNotes());
                assertTrue(note.length() < 1000 || note.matches("note (\\d)\\1{19999}"), job + " is half written");
            }
        }
        for (Path book : List.of(office.workbook(), office.results())) {
            if (Files.exists(book)) {
                try (ZipFile zip = new ZipFile(book.toFile())) {
                    assertTrue(zip.size() > 5);
                    zip.stream().forEach(entry -> read(zip, entry));
                }
            }
        }
        if (Files.exists(office.pdf())) {
            String pdf = Files.readString(office.pdf(), StandardCharsets.ISO_8859_1);
            assertTrue(pdf.startsWith("%PDF") && pdf.stripTrailing().endsWith("%%EOF"), "the PDF is half written");
        }
        TwinfeedService service = TwinfeedService.onClassPath();
        if (Files.exists(office.imported())) {
            service.book(office.imported());
        }
        if (!Files.exists(office.quotes())) {
            assertEquals(Set.of(), issued, "quotes were issued and their folder is gone");
            return new FolderCheck(true, List.of(), List.of());
        }
        FolderCheck found = IssuedQuotes.verify(office.quotes());
        assertTrue(found.quotes().stream().allMatch(quote -> quote.status().equals("unchanged")), found.toString());
        // A killed program may have taken a number for which there is no quote; nothing else is ever missing.
        assertTrue(found.missing().stream().allMatch(one -> one.kind().equals("quote")), found.toString());
        for (String line : issued) {
            Path quote = office.quotes().resolve("quotes/" + line.substring("issued ".length()) + ".quote");
            assertTrue(Files.exists(quote), quote + " was issued and is gone");
        }
        return found;
    }

    private static void read(ZipFile zip, java.util.zip.ZipEntry entry) {
        try (var stream = zip.getInputStream(entry)) {
            stream.readAllBytes();
        } catch (IOException damaged) {
            throw new UncheckedIOException(zip.getName() + " is half written", damaged);
        }
    }
}
