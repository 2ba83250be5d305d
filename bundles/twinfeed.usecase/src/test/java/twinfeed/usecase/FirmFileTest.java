// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;

class FirmFileTest {
    @TempDir
    private Path folder = Path.of("");

    private FirmFile firm(String text) throws IOException {
        return FirmFile.load(Files.writeString(folder.resolve(FirmFile.NAME), text));
    }

    private InputProblem refused(String text) {
        List<InputProblem> problems =
                assertThrows(InputException.class, () -> firm(text)).problems();
        assertEquals(1, problems.size());
        return problems.get(0);
    }

    @Test
    void theTaxNumberStandsBelowTheWaysToReachTheFirm() throws IOException {
        assertEquals(
                "01 23; VAT 1", firm("contact=01 23\ntax-number=VAT 1").firm().headContact());
        assertEquals("VAT 1", firm("tax-number=VAT 1").firm().headContact());
        assertEquals(
                "01 23", firm("contact=01 23\ntax-number=VAT 1").firm().contact(), "nobody is reached by a tax number");
        assertEquals("01 23", firm("contact=01 23").firm().contact());
        assertEquals("", firm("name=Invented").firm().contact());
    }

    @Test
    void aMisspeltKeyIsRefusedWithTheNearest() {
        assertTrue(refused("nme=Invented").right().contains("did you mean name"));
        assertTrue(refused("zzzzzzzzzz=x").right().startsWith("write one of"));
    }

    @Test
    void aMarkOfTheByteOrderIsPassedOver() throws IOException {
        assertEquals("Invented", firm("\ufeffname=Invented").firm().name());
    }

    @Test
    void whatCannotBeShownIsRefused() throws IOException {
        assertEquals("accent", refused("accent=red").element());
        assertEquals("logo", refused("logo=none-such.png").element());
        Files.writeString(folder.resolve("no.png"), "this is no picture");
        assertEquals("logo", refused("logo=no.png").element());
        Files.write(folder.resolve(FirmFile.NAME), "name=M\u00fcller".getBytes(StandardCharsets.ISO_8859_1));
        assertThrows(InputException.class, () -> FirmFile.load(folder.resolve(FirmFile.NAME)));
    }

    @Test
    void aFirmIsFoundBesideItsPriceBook() throws IOException {
        assertEquals("", FirmFile.beside(folder.resolve("prices.csv")).firm().name());
        firm("name=Invented\naccent=00aaFF\nlogo=");
        FirmFile found = FirmFile.beside(folder.resolve("prices.csv"));
        assertEquals("Invented", found.firm().name());
        assertEquals(0x00AAFF, found.firm().accent());
        assertNull(FirmFile.none().folder());
    }

    @Test
    void itsOwnWordingLiesBesideIt() throws IOException {
        FirmFile firm = firm("name=Invented");
        String shipped = firm.texts(Locale.UK).get("term.valid", Map.of()).orElseThrow();
        Files.writeString(folder.resolve("standing-texts.properties"), "term.valid={firm} holds its prices.\n");
        assertEquals(
                "Invented holds its prices.",
                firm.texts(Locale.UK).get("term.valid", Map.of()).orElseThrow());
        assertEquals(
                shipped,
                FirmFile.none().texts(Locale.UK).get("term.valid", Map.of()).orElseThrow());
    }

    @Test
    void itsKeysAreKnown() throws IOException {
        assertEquals(6, FirmFile.keys().size());
        firm(FirmFile.keys().stream()
                .filter(key -> !key.equals("accent"))
                .map(key -> key + "=")
                .collect(Collectors.joining("\n")));
    }
}
