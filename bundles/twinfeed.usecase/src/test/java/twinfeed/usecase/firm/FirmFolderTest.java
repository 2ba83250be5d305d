// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.firm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.io.InputException;
import twinfeed.usecase.FirmFile;

class FirmFolderTest {
    private static final Path DEMO =
            Path.of(System.getProperty("twinfeed.root", "../..")).resolve("demo");

    @TempDir
    private Path home = Path.of("");

    private FirmFolder own() {
        return new FirmFolder(home.resolve("not there").resolve("firm"));
    }

    @Test
    void whatIsSavedIsReadAgainByTheProgramAndByTheJdk() throws IOException {
        FirmFolder own = own();
        assertFalse(own.filled());
        assertEquals(FirmEntries.NONE, own.entries());
        FirmEntries odd = new FirmEntries(
                " Zoë & Sons = \"best\" \\ #1", "1 Höhe; Ort", "mail@zoe.example", "USt 1", "1f5a73", "");
        own.save(odd);
        assertEquals(odd, own.entries());
        assertEquals(" Zoë & Sons = \"best\" \\ #1", own.firm().firm().name());
        assertEquals(0x1F5A73, own.firm().firm().accent());
        Properties jdk = new Properties();
        try (var reader = Files.newBufferedReader(own.folder().resolve(FirmFile.NAME))) {
            jdk.load(reader);
        }
        assertEquals(odd.name(), jdk.getProperty("name"));
        assertEquals("USt 1", jdk.getProperty("tax-number"));
    }

    @Test
    void whatCannotBeUsedIsRefusedAndTheFormerStays() throws IOException {
        FirmFolder own = own();
        own.save(new FirmEntries("One", "", "", "", "", ""));
        assertThrows(InputException.class, () -> own.save(new FirmEntries("Two", "", "", "", "red", "")));
        assertThrows(InputException.class, () -> own.save(new FirmEntries("Two", "", "", "", "", "none.png")));
        Path text = Files.writeString(home.resolve("no.png"), "this is no picture");
        assertThrows(InputException.class, () -> own.takeLogo(text));
        assertFalse(Files.exists(own.folder().resolve("no.png")));
        assertEquals("One", own.entries().name());
    }

    @Test
    void firmBesideAPriceBookIsTakenOverOnceWithLogoAndWording() {
        FirmFolder own = own();
        own.takeOver(DEMO);
        FirmFile there = FirmFile.beside(DEMO.resolve("prices.csv"));
        assertEquals(there.firm().name(), own.firm().firm().name());
        assertEquals(there.firm().contact(), own.firm().firm().contact());
        assertNotNull(own.firm().firm().logo());
        assertEquals(
                there.texts(Locale.UK).get("term.valid", Map.of()),
                own.firm().texts(Locale.UK).get("term.valid", Map.of()));
        assertTrue(own.wording(Locale.GERMANY).size() > 1);
        own.save(own.entries().withLogo(""));
        own.takeOver(DEMO);
        assertEquals("", own.entries().logo(), "what was changed here is not replaced");
    }

    @Test
    void wordingIsCheckedBeforeItIsWritten() {
        FirmFolder own = own();
        own.saveWording(Locale.UK, Map.of("term.loft", "", "exclusion.own.1", "Moving of furniture for {customer}."));
        own.saveWording(Locale.GERMANY, Map.of("term.loft", "Der Dachboden ist frei."));
        assertTrue(own.firm().texts(Locale.UK).get("term.loft", Map.of()).isEmpty());
        assertEquals(
                "Der Dachboden ist frei.",
                own.firm().texts(Locale.GERMANY).get("term.loft", Map.of()).orElseThrow());
        assertThrows(InputException.class, () -> own.saveWording(Locale.UK, Map.of("caution.electricity", "")));
        assertThrows(InputException.class, () -> own.saveWording(Locale.UK, Map.of("term.loft", "for {nobody}")));
        assertEquals("", own.wording(Locale.UK).get("term.loft"));
        assertTrue(FirmFolder.dispensable("term.loft"));
        assertFalse(FirmFolder.dispensable("caution.electricity"));
    }

    @Test
    void englishWordingIsTheOneThatHoldsEverywhere() {
        FirmFolder own = own();
        own.saveWording(Locale.ROOT, java.util.Map.of("term.valid", "Until {validUntil}."));
        assertEquals(own.wording(Locale.UK), own.wording(Locale.ROOT));
        assertTrue(own.wording(Locale.GERMANY).isEmpty());
        assertTrue(FirmFolder.shipped(Locale.UK).containsKey("term.valid"));
    }
}
