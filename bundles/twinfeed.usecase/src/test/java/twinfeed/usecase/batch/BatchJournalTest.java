// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.io.InputException;
import twinfeed.usecase.batch.BatchJournal.Entry;

/** What was judged before is kept, whatever ended the work. */
final class BatchJournalTest {
    private static final byte[] WORK = {1, 2, 3, 4};
    private static final Entry JUDGED = new Entry(
            2,
            Results.of(
                    Results.judged(2, Urgency.SIGN, 12, 1, Verdict.DOES_NOT_SUIT),
                    "Rowan Lane, Netherquill",
                    Results.offer(Verdict.SUITS, "318.50", Map.of("Pump", new BigDecimal("90.00")))),
            null);
    private static final Entry REJECTED = new Entry(3, null, new Refused(3, "Rowan Lane 3", "no reading"));
    private static final Entry NOTHING_OFFERED =
            new Entry(5, Results.of(Results.judged(5, Urgency.OPEN, -1, 0, null), "", null), null);

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out.csv");
    }

    private BatchJournal open() throws IOException {
        return BatchJournal.of(out(), WORK);
    }

    private void write(Entry... entries) throws IOException {
        try (BatchJournal journal = open()) {
            for (Entry entry : entries) {
                assertNull(journal.next(entry.row()));
                journal.add(entry);
            }
        }
    }

    private static List<Entry> all(BatchJournal journal) throws IOException {
        List<Entry> all = new ArrayList<>();
        journal.each(all::add);
        return all;
    }

    @Test
    void everyRowComesBackAsItWas() throws IOException {
        write(JUDGED, REJECTED, NOTHING_OFFERED);
        try (BatchJournal journal = open()) {
            assertEquals(JUDGED, journal.next(2));
            assertEquals(REJECTED, journal.next(3));
            assertEquals(NOTHING_OFFERED, journal.next(5));
            assertNull(journal.next(6));
            assertEquals(3, journal.takenOver());
            assertEquals(List.of(JUDGED, REJECTED, NOTHING_OFFERED), all(journal));
        }
    }

    @Test
    void workThatEndsBeforeItsFirstRowLosesNothing() throws IOException {
        write(JUDGED, REJECTED);
        open().close();
        try (BatchJournal journal = open()) {
            assertEquals(JUDGED, journal.next(2));
        }
        try (BatchJournal journal = open()) {
            assertEquals(List.of(JUDGED, REJECTED), all(journal));
        }
    }

    @Test
    void whatIsAddedAfterwardsFollows() throws IOException {
        write(JUDGED);
        try (BatchJournal journal = open()) {
            assertEquals(JUDGED, journal.next(2));
            assertNull(journal.next(3));
            journal.add(REJECTED);
            assertNull(journal.next(5));
            journal.add(NOTHING_OFFERED);
            assertEquals(1, journal.takenOver());
        }
        try (BatchJournal journal = open()) {
            assertEquals(List.of(JUDGED, REJECTED, NOTHING_OFFERED), all(journal));
        }
    }

    @Test
    void anotherRowThanTheNextBeginsAnewFromThere() throws IOException {
        write(JUDGED, REJECTED, NOTHING_OFFERED);
        try (BatchJournal journal = open()) {
            assertEquals(JUDGED, journal.next(2));
            assertNull(journal.next(4));
            assertNull(journal.next(5), "what follows is of another list");
        }
        try (BatchJournal journal = open()) {
            assertEquals(List.of(JUDGED), all(journal));
        }
    }

    @Test
    void otherWorkBeginsAnew() throws IOException {
        write(JUDGED);
        try (BatchJournal journal = BatchJournal.of(out(), new byte[] {1, 2, 3, 5})) {
            assertNull(journal.next(2));
        }
        assertFalse(Files.exists(BatchJournal.beside(out())), "nothing was judged");
    }

    @Test
    void anEntryThatIsCutOffOrDamagedIsNoEntry() throws IOException {
        Path file = BatchJournal.beside(out());
        write(JUDGED, REJECTED);
        byte[] whole = Files.readAllBytes(file);
        int last = whole.length - 1;
        for (int length : new int[] {last, last - 1, WORK.length + 1, WORK.length + 12}) {
            Files.write(file, whole);
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                channel.truncate(length);
            }
            try (BatchJournal journal = open()) {
                assertEquals(length >= last - 1 ? JUDGED : null, journal.next(2));
                assertNull(journal.next(3), "length " + length);
            }
        }
        for (int at : new int[] {last, WORK.length + 4, WORK.length + 8, WORK.length + 20}) {
            byte[] damaged = whole.clone();
            damaged[at] ^= (byte) 0x80;
            Files.write(file, damaged);
            try (BatchJournal journal = open()) {
                assertEquals(at == last ? JUDGED : null, journal.next(2));
                assertNull(journal.next(3), "at " + at);
            }
        }
    }

    @Test
    void aResultThatIsWrittenNeedsItNoMore() throws IOException {
        write(JUDGED);
        try (BatchJournal journal = open()) {
            assertEquals(JUDGED, journal.next(2));
            journal.finish();
        }
        assertFalse(Files.exists(BatchJournal.beside(out())));
    }

    @Test
    void oneProgramAtATimeHasIt() throws IOException {
        try (BatchJournal journal = open()) {
            journal.add(JUDGED);
            InputException busy = assertThrows(InputException.class, this::open);
            assertTrue(busy.getMessage().contains("out.csv"), busy.getMessage());
        }
        try (BatchJournal journal = open()) {
            assertEquals(JUDGED, journal.next(2), "and nothing of it was lost");
        }
    }

    @Test
    void whatWasChangedMeanwhileIsNotWritten() throws IOException {
        write(JUDGED, REJECTED);
        try (BatchJournal journal = open()) {
            assertEquals(JUDGED, journal.next(2));
            assertEquals(REJECTED, journal.next(3));
            try (FileChannel channel = FileChannel.open(BatchJournal.beside(out()), StandardOpenOption.WRITE)) {
                channel.truncate(channel.size() - 1);
            }
            assertThrows(IOException.class, () -> all(journal));
        }
    }

    @Test
    void aPlainListSaysOfARejectedRowWhy() {
        List<?> line = REJECTED.line();
        assertEquals(ResultLine.KEYS.size(), line.size());
        assertEquals(List.of(3, "Rowan Lane 3", "rejected"), line.subList(0, 3));
        assertEquals("no reading", line.get(line.size() - 1));
        assertEquals(2, JUDGED.line().get(0));
    }
}
