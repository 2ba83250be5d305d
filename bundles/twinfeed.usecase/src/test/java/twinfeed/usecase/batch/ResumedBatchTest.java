// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.io.InputException;

/** Work on a list that was stopped goes on where it was, and its result is the one that it would have been. */
final class ResumedBatchTest {
    private static final int ROWS = 5;
    private static final String TEMPLATE = "rowan-brook";
    private static final BatchProgress QUIET = (done, all, before) -> {};

    @TempDir
    private Path folder;

    private Path list;

    @BeforeEach
    void list() throws IOException {
        list = folder.resolve("list.csv");
        Files.writeString(
                list,
                """
                dwelling,water.hardness,site.address
                Sedge Row 1,180 mg/L,1 Sedge Row; Westermere
                Sedge Row 2,190 mg/L,2 Sedge Row; Westermere
                Sedge Row 3,hard,3 Sedge Row; Westermere
                Sedge Row 4,420 mg/L,4 Sedge Row; Westermere
                Sedge Row 1,180 mg/L,1 Sedge Row; Westermere
                """);
    }

    private void stopAfter(int rows, Path out) {
        assertThrows(CancellationException.class, () -> DemoBatch.like(TEMPLATE, DemoBatch.DAY)
                .write(list, out, (done, all, before) -> {
                    assertEquals(ROWS, all);
                    if (done == rows) {
                        throw new CancellationException();
                    }
                }));
        assertFalse(Files.exists(out), "no half result");
    }

    @ParameterizedTest
    @ValueSource(strings = {"out.xlsx", "out.csv", "out.jsonl"})
    void whatWasJudgedBeforeIsTakenOver(String name) throws IOException {
        Path whole = Files.createDirectory(folder.resolve("whole")).resolve(name);
        BatchReport once = DemoBatch.like(TEMPLATE, DemoBatch.DAY).write(list, whole, QUIET);
        assertEquals(0, once.before());
        Path out = folder.resolve(name);
        for (int stop = 1; stop < ROWS; stop++) {
            stopAfter(stop, out);
        }
        BatchReport resumed = DemoBatch.like(TEMPLATE, DemoBatch.DAY).write(list, out, QUIET);
        assertEquals(ROWS - 1, resumed.before());
        assertEquals(List.of(3, 2), List.of(resumed.judged(), resumed.rejected()));
        assertEquals(once.refused(), resumed.refused());
        assertArrayEquals(Files.readAllBytes(whole), Files.readAllBytes(out));
        assertFalse(Files.exists(BatchJournal.beside(out)), "nothing is left behind");
    }

    @Test
    void anEntryThatWasCutOffIsJudgedAgain() throws IOException {
        Path out = folder.resolve("out.csv");
        stopAfter(3, out);
        try (FileChannel journal = FileChannel.open(BatchJournal.beside(out), StandardOpenOption.WRITE)) {
            journal.truncate(journal.size() - 3);
        }
        assertEquals(
                2,
                DemoBatch.like(TEMPLATE, DemoBatch.DAY).write(list, out, QUIET).before());
        assertEquals(ROWS + 1, Files.readAllLines(out).size());
    }

    @Test
    void aDamagedEntryIsJudgedAgain() throws IOException {
        Path out = folder.resolve("out.csv");
        Path whole = folder.resolve("whole.csv");
        DemoBatch.like(TEMPLATE, DemoBatch.DAY).write(list, whole, QUIET);
        stopAfter(3, out);
        Path journal = BatchJournal.beside(out);
        byte[] bytes = Files.readAllBytes(journal);
        bytes[bytes.length - 5] ^= 1;
        Files.write(journal, bytes);
        assertEquals(
                2,
                DemoBatch.like(TEMPLATE, DemoBatch.DAY).write(list, out, QUIET).before());
        assertArrayEquals(Files.readAllBytes(whole), Files.readAllBytes(out));
    }

    @Test
    void otherWorkBeginsAnew() throws IOException {
        Path out = folder.resolve("out.csv");
        stopAfter(3, out);
        assertEquals(
                0,
                DemoBatch.like(TEMPLATE, DemoBatch.DAY.plusDays(1))
                        .write(list, out, QUIET)
                        .before(),
                "another day, other prices");
        stopAfter(3, folder.resolve("again.csv"));
        Files.writeString(list, Files.readString(list).replace("180 mg/L", "181 mg/L"));
        assertEquals(
                0,
                DemoBatch.like(TEMPLATE, DemoBatch.DAY)
                        .write(list, folder.resolve("again.csv"), QUIET)
                        .before(),
                "another list");
    }

    @Test
    void twoProgramsDoNotWriteOneResult() {
        Path out = folder.resolve("out.csv");
        BatchProgress second = (done, all, before) -> {
            InputException refused = assertThrows(InputException.class, () -> DemoBatch.like(TEMPLATE, DemoBatch.DAY)
                    .write(list, out, QUIET));
            assertTrue(refused.getMessage().contains("by another program"), refused.getMessage());
        };
        assertEquals(
                3,
                DemoBatch.like(TEMPLATE, DemoBatch.DAY).write(list, out, second).judged());
    }

    /** RFC 4180 quotes what holds a comma; a JSON line leaves out what is absent. */
    @Test
    void aLineIsADwellingInTheOrderOfTheList() throws IOException {
        Path csv = folder.resolve("out.csv");
        Path json = folder.resolve("out.jsonl");
        DemoBatch.like(TEMPLATE, DemoBatch.DAY).write(list, csv, QUIET);
        DemoBatch.like(TEMPLATE, DemoBatch.DAY).write(list, json, QUIET);
        List<String> rows = Files.readAllLines(csv);
        assertEquals(String.join(",", ResultLine.KEYS), rows.get(0));
        assertTrue(rows.get(1).startsWith("2,Sedge Row 1,judged,"), rows.get(1));
        assertTrue(rows.get(3).startsWith("4,Sedge Row 3,rejected,"), rows.get(3));
        assertTrue(rows.get(5).endsWith("or give each a name of its own\""), rows.get(5));
        List<String> objects = Files.readAllLines(json);
        assertEquals(ROWS, objects.size());
        assertTrue(objects.get(0).startsWith("{\"row\":2,\"dwelling\":\"Sedge Row 1\",\"state\":\"judged\","));
        assertFalse(objects.get(2).contains("null"), objects.get(2));
    }
}
