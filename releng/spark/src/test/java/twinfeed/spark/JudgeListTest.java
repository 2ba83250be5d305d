// SPDX-License-Identifier: EPL-2.0
package twinfeed.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.batch.BatchTask;
import twinfeed.usecase.batch.BatchWriting;

/** The distributed engine gives exactly what the program itself writes. */
final class JudgeListTest {
    private static final Path DEMO = Path.of(System.getProperty("twinfeed.root"), "demo");
    private static final Path JOB = DEMO.resolve("rowan-brook.job");
    private static final Path BOOK = DEMO.resolve("prices.csv");
    private static final String DAY = "2026-11-29";

    private static SparkSession spark;

    @TempDir
    private Path folder;

    @BeforeAll
    static void start() {
        spark = SparkSession.builder()
                .master("local[2]")
                .appName("twinfeed test")
                .config("spark.ui.enabled", "false")
                .config("spark.driver.bindAddress", "127.0.0.1")
                .config("spark.driver.host", "127.0.0.1")
                .getOrCreate();
    }

    @AfterAll
    static void stop() throws IOException {
        spark.close();
    }

    private Path out(Path list, int partitions) {
        return folder.resolve("spark-" + partitions + list.getFileName());
    }

    private String onSpark(Path list, int partitions) throws IOException {
        return onSpark(list, partitions, DAY);
    }

    private String onSpark(Path list, int partitions, String day) throws IOException {
        Path out = out(list, partitions);
        JudgeList.run(
                spark,
                Map.of(
                        "--list", list.toString(),
                        "--template", JOB.toString(),
                        "--book", BOOK.toString(),
                        "--date", day,
                        "--out", out.toString(),
                        "--partitions", String.valueOf(partitions)));
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        try (Stream<Path> parts = Files.list(out)) {
            List<Path> sorted = parts.filter(
                            each -> each.getFileName().toString().startsWith("part-"))
                    .sorted()
                    .toList();
            for (Path part : sorted) {
                Files.copy(part, all);
            }
        }
        return all.toString(StandardCharsets.UTF_8);
    }

    private String byTheProgram(Path list) throws IOException {
        Path out = folder.resolve("program.csv");
        TwinfeedService service = TwinfeedService.onClassPath();
        BatchTask task = new BatchTask(
                service.open(JOB, null), service.book(BOOK), FirmFile.beside(BOOK), LocalDate.parse(DAY), Locale.UK);
        new BatchWriting(service, task).write(list, out, (done, all, before) -> {});
        return Files.readString(out);
    }

    @Test
    void theLinesAreThoseOfTheProgramByteForByte() throws IOException {
        Path list = folder.resolve("list.csv");
        StringBuilder text = new StringBuilder("# invented\ndwelling;water.hardness;site.address\n");
        for (int i = 1; i <= 40; i++) {
            String hardness = i == 7 ? "hard" : 100 + 11 * i + " mg/L";
            text.append("Sedge Row %d;%s;\"%d Sedge Row; Westermere\"%n".formatted(i, hardness, i));
        }
        text.append("\n# a remark\nSEDGE  ROW 3;200 mg/L;twice\n");
        Files.writeString(list, text);
        String expected = byTheProgram(list);
        assertEquals(42, expected.lines().count());
        assertTrue(expected.contains("already; take one of the two rows away"), expected);
        assertEquals(expected, onSpark(list, 3));
        assertEquals(expected, onSpark(list, 8), "whatever the number of parts");
    }

    @Test
    void parquetGivesWhatTheSameTableGivesAsCsv() throws IOException {
        Path csv = folder.resolve("list.csv");
        Files.writeString(csv, "dwelling,water.hardness\nSedge Row 1,180 mg/L\nSedge Row 2,\nSedge Row 3,420 mg/L\n");
        Path parquet = folder.resolve("list.parquet");
        spark.read()
                .option("header", true)
                .csv(csv.toString())
                .coalesce(1)
                .write()
                .parquet(parquet.toString());
        assertEquals(byTheProgram(csv), onSpark(parquet, 2));
    }

    @Test
    void aColumnThatIsUnknownRefusesTheListBeforeAnyRowIsJudged() throws IOException {
        Path csv = folder.resolve("list.csv");
        Files.writeString(csv, "dwelling,water.hardnes\nSedge Row 1,180 mg/L\n");
        RuntimeException refused = assertThrows(RuntimeException.class, () -> onSpark(csv, 2));
        assertTrue(refused.getMessage().contains("water.hardnes"), refused.getMessage());
        assertFalse(Files.exists(out(csv, 2)));
    }

    @Test
    void pricesThatDoNotHoldOnTheDayRefuseTheListBeforeAnyRowIsJudged() throws IOException {
        Path csv = folder.resolve("list.csv");
        Files.writeString(csv, "dwelling,water.hardness\nSedge Row 1,180 mg/L\n");
        RuntimeException refused = assertThrows(UnusableException.class, () -> onSpark(csv, 2, "2001-01-01"));
        assertTrue(refused.getMessage().contains("2001"), refused.getMessage());
        assertFalse(Files.exists(out(csv, 2)));
    }
}
