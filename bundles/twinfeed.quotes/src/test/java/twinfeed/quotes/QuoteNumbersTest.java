// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuoteNumbersTest {
    private static final int EACH = 150;

    @TempDir
    private Path office = Path.of("");

    /** What the other processes run: takes numbers and prints them. */
    public static final class Taker {
        private Taker() {}

        /** Takes numbers in the folder given. */
        public static void main(String[] args) throws IOException {
            QuoteNumbers numbers = new QuoteNumbers(Path.of(args[0]));
            // The barrier: nobody begins before all are there.
            Files.createFile(Path.of(args[0], "ready-" + args[1]));
            while (!Files.exists(Path.of(args[0], "go"))) {
                Thread.onSpinWait();
            }
            for (int i = 0; i < EACH; i++) {
                System.out.println(numbers.take(2026));
            }
        }
    }

    @Test
    void countsFromOneInEachYear() throws IOException {
        QuoteNumbers numbers = new QuoteNumbers(office);
        assertEquals("2026-0001", numbers.take(2026).toString());
        assertEquals("2026-0002", numbers.take(2026).toString());
        assertEquals("2027-0001", numbers.take(2027).toString());
        assertEquals("2026-0003", new QuoteNumbers(office).take(2026).toString());
    }

    @Test
    void neverFillsAGap() throws IOException {
        QuoteNumbers numbers = new QuoteNumbers(office);
        numbers.take(2026);
        numbers.take(2026);
        numbers.take(2026);
        Files.delete(office.resolve("numbers/2026/2"));
        assertEquals(4, numbers.take(2026).count());
    }

    @Test
    void passesOverForeignFiles() throws IOException {
        Files.createDirectories(office.resolve("numbers/2026"));
        for (String name : List.of("readme.txt", "007", "12345678901", "-3")) {
            Files.createFile(office.resolve("numbers/2026").resolve(name));
        }
        assertEquals(1, new QuoteNumbers(office).take(2026).count());
    }

    @Test
    void goesOnBeyondFourDigits() throws IOException {
        Files.createDirectories(office.resolve("numbers/2026"));
        Files.createFile(office.resolve("numbers/2026/9999"));
        QuoteNumber number = new QuoteNumbers(office).take(2026);
        assertEquals("2026-10000", number.toString());
        assertEquals(number, QuoteNumber.parse("2026-10000"));
    }

    /** Two processes that take numbers at the same time get every number once, with no gap. */
    @Test
    void givesTwoProcessesDifferentNumbers() throws Exception {
        List<Process> processes = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            processes.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Taker.class.getName(),
                            office.toString(),
                            String.valueOf(i))
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start());
        }
        for (int i = 0; i < 2; i++) {
            while (!Files.exists(office.resolve("ready-" + i))) {
                assertEquals(true, processes.get(i).isAlive(), "the process started");
                Thread.sleep(5);
            }
        }
        Files.createFile(office.resolve("go"));
        List<String> taken = new ArrayList<>();
        for (Process process : processes) {
            taken.addAll(new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                    .lines()
                    .toList());
            assertEquals(0, process.waitFor());
        }
        List<String> all = IntStream.rangeClosed(1, 2 * EACH)
                .mapToObj(count -> new QuoteNumber(2026, count).toString())
                .toList();
        assertEquals(all, taken.stream().sorted().toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-42", "26-0042", "2026-0000", "2026-0042-r1", "", "0026-0001"})
    void refusesWhatIsNoNumber(String text) {
        assertEquals(
                "notANumber",
                assertThrows(LifeException.class, () -> QuoteNumber.parse(text)).key());
    }

    @Test
    void sortsByYearAndCount() {
        List<QuoteNumber> numbers =
                new ArrayList<>(List.of(new QuoteNumber(2027, 1), new QuoteNumber(2026, 10), new QuoteNumber(2026, 9)));
        numbers.sort(null);
        assertEquals("[2026-0009, 2026-0010, 2027-0001]", numbers.toString());
    }
}
