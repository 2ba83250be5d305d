// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderVerificationTest {
    @TempDir
    private Path office;

    private QuoteFolder folder;

    @BeforeEach
    void open() {
        folder = new QuoteFolder(office);
    }

    private Path issue() throws IOException {
        return Issued.today().in(folder).file();
    }

    private List<String> missing() throws IOException {
        return folder.verify().missing().stream()
                .map(one -> one.kind() + " " + one.name())
                .toList();
    }

    @Test
    void whatWasIssuedIsSound() throws IOException {
        issue();
        issue();
        FolderVerification found = folder.verify();
        assertTrue(found.sound());
        assertEquals(2, found.quotes().size());
    }

    @Test
    void anEmptyOfficeIsSound() throws IOException {
        assertTrue(folder.verify().sound());
    }

    @Test
    void namesEachNumberThatIsNotThere() throws IOException {
        issue();
        Path second = issue();
        Path third = issue();
        issue();
        Files.delete(second);
        Files.delete(third);
        Files.delete(office.resolve("numbers/2026/3"));
        assertEquals(List.of("QUOTE 2026-0002", "NUMBER 2026-0003"), missing());
        assertFalse(folder.verify().sound());
    }

    @Test
    void tellsChangedFromUnreadableAndFromOnesWithoutDigest() throws IOException {
        Path changed = issue();
        Path broken = issue();
        Path bare = issue();
        write(changed, Files.readString(changed).replace("GBP", "EUR"));
        write(broken, "{");
        Files.delete(bare.resolveSibling(bare.getFileName() + ".sha256"));
        List<FolderVerification.Checked> quotes = folder.verify().quotes();
        assertEquals(Verification.CHANGED, quotes.get(0).opened().verification());
        assertEquals(null, quotes.get(1).opened());
        assertTrue(
                quotes.get(1).problem().contains("2026-0002-r1.quote"),
                quotes.get(1).problem());
        assertEquals(Verification.UNKNOWN, quotes.get(2).opened().verification());
        assertTrue(quotes.stream().noneMatch(FolderVerification.Checked::sound));
    }

    private static void write(Path file, String text) throws IOException {
        assertTrue(file.toFile().setWritable(true));
        Files.writeString(file, text);
    }

    @Test
    void aHugeNumberCostsNoTime() throws IOException {
        issue();
        Files.createFile(office.resolve("numbers/2026/999999999"));
        assertEquals(1000, missing().size());
    }

    /** The folder of a year is a file here, so no number can be had; on a full disk it is the same. */
    @Test
    void whereNoNumberCanBeTakenNothingIsLeftBehind() throws IOException {
        Files.createDirectories(office.resolve("numbers"));
        Files.createFile(office.resolve("numbers/2026"));
        assertThrows(IOException.class, this::issue);
        try (Stream<Path> quotes = Files.list(office.resolve("quotes"))) {
            assertEquals(List.of(), quotes.toList());
        }
    }

    /** Where the quote cannot be written after its number was taken, the number is free again and no digest stays alone. */
    @Test
    void aQuoteThatCannotBeWrittenTakesNoNumber() throws IOException {
        Path dangling = office.resolve("quotes/2026-0001-r1.quote");
        Files.createDirectories(dangling.getParent());
        Files.createSymbolicLink(dangling, office.resolve("nowhere"));
        assertThrows(IOException.class, this::issue);
        assertFalse(Files.exists(office.resolve("numbers/2026/1")));
        assertFalse(Files.exists(office.resolve("quotes/2026-0001-r1.quote.sha256")));
    }
}
