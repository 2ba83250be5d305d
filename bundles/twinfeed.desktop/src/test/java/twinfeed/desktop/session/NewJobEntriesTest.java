// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.PlatformFolders;
import twinfeed.desktop.text.Words;

final class NewJobEntriesTest {
    @TempDir
    Path folder;

    private final Words words = new Words(Locale.UK);

    private String problem(String job, String catalogue) {
        return new NewJobEntries(job, catalogue).problem(words);
    }

    @Test
    void everythingProposedMayBeginAtOnce() throws Exception {
        DemoFiles.copyInto(folder);
        Path job = NewJobEntries.proposal(folder, LocalDate.of(2026, 11, 25));
        assertEquals("job-2026-11-25.job", job.getFileName().toString());
        assertEquals(
                "", problem(job.toString(), folder.resolve("heaters.catalogue").toString()));
        Files.writeString(job, "");
        assertEquals(
                "job-2026-11-25-2.job",
                NewJobEntries.proposal(folder, LocalDate.of(2026, 11, 25))
                        .getFileName()
                        .toString());
    }

    @Test
    void whatKeepsItFromBeginningIsSaid() throws Exception {
        DemoFiles.copyInto(folder);
        String heaters = folder.resolve("heaters.catalogue").toString();
        assertTrue(problem("", heaters).contains("file"));
        assertTrue(problem(folder.resolve("alder-beck.job").toString(), heaters).contains("already"));
        assertTrue(problem(folder.resolve("no/such.job").toString(), heaters).contains("no folder"));
        String job = folder.resolve("new").toString();
        assertTrue(problem(job, "").contains("catalogue"));
        assertTrue(problem(job, folder.resolve("none.catalogue").toString()).contains("no catalogue"));
        assertEquals("", problem(job, heaters), "the ending may be left out");
        assertEquals(folder.resolve("new.job"), new NewJobEntries(job, heaters).file());
    }

    @Test
    void nameThatNoFileCanHaveIsSaidAndTheNextFreeNumberIsProposed() throws Exception {
        DemoFiles.copyInto(folder);
        String heaters = folder.resolve("heaters.catalogue").toString();
        assertTrue(problem("new\0job", heaters).contains("new"), problem("new\0job", heaters));
        LocalDate day = LocalDate.of(2026, 11, 25);
        for (String next : List.of("job-2026-11-25.job", "job-2026-11-25-2.job", "job-2026-11-25-3.job")) {
            Path proposed = NewJobEntries.proposal(folder, day);
            assertEquals(folder.resolve(next), proposed);
            Files.writeString(proposed, "");
        }
    }

    /** XDG Base Directory Specification 0.8: absolute paths only, $HOME/.local/share where none is set. */
    @Test
    void ownFilesAreWhereThePlatformWantsThem() {
        Path home = folder;
        assertEquals(home.resolve(".local/share/twinfeed"), new PlatformFolders("Linux", home, Map.of()).data());
        Path data = folder.resolve("data").toAbsolutePath();
        assertEquals(
                data.resolve("twinfeed"),
                new PlatformFolders("Linux", home, Map.of("XDG_DATA_HOME", data.toString())).data());
        assertEquals(
                home.resolve(".local/share/twinfeed"),
                new PlatformFolders("Linux", home, Map.of("XDG_DATA_HOME", "data")).data());
        assertEquals(
                data.resolve("Twinfeed"),
                new PlatformFolders("Windows 11", home, Map.of("APPDATA", data.toString())).data());
        assertEquals(
                home.resolve("Library/Application Support/Twinfeed"),
                new PlatformFolders("Mac OS X", home, Map.of()).data());
    }
}
