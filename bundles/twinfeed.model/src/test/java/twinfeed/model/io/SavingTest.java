// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.job.Job;
import twinfeed.model.survey.SurveyFactory;

/** A file appears whole or not at all; what was there before stays if it cannot be written. */
class SavingTest {
    @TempDir
    Path folder;

    private Path path;
    private Job job;

    @BeforeEach
    void prepare() {
        path = folder.resolve("alder.job");
        job = JobFile.create();
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        job.getSurvey().setNotes("first");
    }

    @Test
    void savedFileIsRead() throws IOException {
        JobFile.save(job, path);
        assertEquals("first", JobFile.load(path).getSurvey().getNotes());
        assertOnly("alder.job");
    }

    @Test
    void savedOverItIsTheNewOne() throws IOException {
        JobFile.save(job, path);
        job.getSurvey().setNotes("second");
        JobFile.save(job, path);
        assertEquals("second", JobFile.load(path).getSurvey().getNotes());
        assertOnly("alder.job");
    }

    @Test
    void aCatalogueIsSavedToo() throws IOException {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        catalogue.setTitle("few");
        CatalogueFile.save(catalogue, folder.resolve("few.catalogue"));
        assertEquals("few", CatalogueFile.load(folder.resolve("few.catalogue")).getTitle());
        job.setCatalogue("few.catalogue");
        JobFile.save(job, path);
        assertEquals("few", JobFile.catalogue(JobFile.load(path), path).getTitle());
    }

    @Test
    void textThatNoFileCanHoldLeavesTheOldFile() throws IOException {
        JobFile.save(job, path);
        byte[] before = Files.readAllBytes(path);
        for (String bad : List.of("bell \u0007", "half a pair \uD83D", "\uFFFE")) {
            job.getSurvey().setNotes(bad);
            InputException refused = assertThrows(InputException.class, () -> JobFile.save(job, path));
            assertTrue(refused.getMessage().startsWith(path + ", Survey.notes"), refused.getMessage());
            assertTrue(refused.getMessage().endsWith("a character that no file can hold; type it anew"));
        }
        job.getSurvey().setNotes("whole pair \uD83D\uDEBF");
        assertArrayEquals(before, Files.readAllBytes(path));
        JobFile.save(job, path);
        assertEquals("whole pair \uD83D\uDEBF", JobFile.load(path).getSurvey().getNotes());
        assertOnly("alder.job");
    }

    @Test
    void badTextInAListIsRefusedToo() {
        job.getSurvey().getCandidates().add("h\u0000");
        assertThrows(InputException.class, () -> JobFile.save(job, path));
        assertTrue(Files.notExists(path));
    }

    @Test
    void folderInPlaceOfFile() throws IOException {
        InputException refused = assertThrows(InputException.class, () -> JobFile.save(job, folder));
        assertEquals(folder + ": this is a folder; name a file in it", refused.getMessage());
        assertOnly();
    }

    @Test
    void folderThatIsNotThere() throws IOException {
        Path away = folder.resolve("away").resolve("a.job");
        InputException refused = assertThrows(InputException.class, () -> JobFile.save(job, away));
        assertEquals(
                away
                        + ": the file could not be written (there is no such folder); check the folder and the free space, or"
                        + " save to another place; what was there before is unchanged",
                refused.getMessage());
        assertOnly();
    }

    @Test
    void nameThatAStoppedProgramLeftIsPassedOver() throws IOException {
        Files.writeString(folder.resolve(".alder.job.0.part"), "half");
        JobFile.save(job, path);
        assertEquals("first", JobFile.load(path).getSurvey().getNotes());
        assertOnly(".alder.job.0.part", "alder.job");
        assertEquals("half", Files.readString(folder.resolve(".alder.job.0.part")));
    }

    @Test
    void linkIsFollowedAndRightsAreKept() throws IOException {
        assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
        Path real = folder.resolve("real.job");
        JobFile.save(job, real);
        Files.setPosixFilePermissions(real, PosixFilePermissions.fromString("rw-rw-r--"));
        Files.createSymbolicLink(path, real);
        job.getSurvey().setNotes("through the link");
        JobFile.save(job, path);
        assertTrue(Files.isSymbolicLink(path));
        assertEquals("through the link", JobFile.load(real).getSurvey().getNotes());
        assertEquals("rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(real)));
    }

    /** Writers and a reader at once: the reader sees one of the whole files, never a part and never nothing. */
    @Test
    void readerNeverSeesHalfAFile() throws Exception {
        JobFile.save(job, path);
        AtomicBoolean done = new AtomicBoolean();
        ExecutorService pool = Executors.newFixedThreadPool(3);
        try {
            Future<Integer> reader = pool.submit(() -> readUntil(done));
            List<Future<?>> writers = List.of(pool.submit(() -> writeOften("a")), pool.submit(() -> writeOften("b")));
            for (Future<?> writer : writers) {
                writer.get();
            }
            done.set(true);
            assertTrue(reader.get() > 0);
        } finally {
            pool.shutdownNow();
        }
        assertOnly("alder.job");
    }

    private int readUntil(AtomicBoolean done) {
        int reads = 0;
        do {
            String notes = JobFile.load(path).getSurvey().getNotes();
            assertTrue(notes.equals("first") || notes.chars().distinct().count() == 1);
            reads++;
        } while (!done.get());
        return reads;
    }

    private void writeOften(String letter) {
        Job mine = JobFile.create();
        mine.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        for (int i = 1; i <= 100; i++) {
            mine.getSurvey().setNotes(letter.repeat(1000 * i));
            JobFile.save(mine, path);
        }
    }

    private void assertOnly(String... names) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    Stream.of(names).sorted().toList(),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }
}
