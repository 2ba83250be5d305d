// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A user's own rule set in a folder: no code is needed for it, and a slip in it is said by file, row and column. */
class OwnRuleSetTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // filled by JUnit
    Path folder;

    private Path own() {
        return folder.resolve("north-isles-2030");
    }

    @BeforeEach
    void copyTheStandardOne() throws IOException {
        Files.createDirectories(own());
        List<String> names = new ArrayList<>(RuleSet.TABLES);
        names.add("numbers");
        for (String name : names) {
            try (InputStream stream = RuleSets.class.getResourceAsStream(RuleSets.DEFAULT + "/" + name + ".csv")) {
                Files.copy(Objects.requireNonNull(stream), own().resolve(name + ".csv"));
            }
        }
        System.setProperty(RuleSets.FOLDER, folder.toString());
    }

    @AfterEach
    void forget() {
        System.clearProperty(RuleSets.FOLDER);
    }

    private void replace(String file, String old, String replacement) throws IOException {
        Path path = own().resolve(file);
        String text = Files.readString(path, StandardCharsets.UTF_8);
        assertTrue(text.contains(old), old);
        Files.writeString(path, text.replace(old, replacement), StandardCharsets.UTF_8);
    }

    private static String refusal() {
        return String.valueOf(assertThrows(IllegalArgumentException.class, () -> RuleSets.find("north-isles-2030"))
                .getMessage());
    }

    @Test
    void itIsListedAndRead() throws IOException {
        replace("numbers.csv", "BS 7671:2018+A2:2022 tables", "North Isles 2030");
        replace("numbers.csv", "voltage.nominal,230", "voltage.nominal,220");
        assertEquals(List.of("bs7671-2018-a2", "iec60364-5-52", "north-isles-2030"), RuleSets.ids());
        RuleSet rules = RuleSets.find("north-isles-2030").orElseThrow();
        assertEquals("North Isles 2030", rules.title());
        assertEquals(220, rules.number("voltage.nominal"));
        assertEquals(230, RuleSets.standard().number("voltage.nominal"));
    }

    @Test
    void aSlipIsSaidByFileRowAndColumn() throws IOException {
        replace("cables.csv", ",6,7.3,", ",6,seven,");
        String said = refusal();
        assertTrue(said.contains("cables.csv"), said);
        assertTrue(said.contains("row 5"), said);
        assertTrue(said.contains("drop"), said);
        assertTrue(said.contains("seven"), said);
    }

    @Test
    void aSlipInTheVoltagesIsSaid() throws IOException {
        replace("numbers.csv", "216.2 230 240 253", "216.2 230 V");
        assertTrue(refusal().contains("numbers.csv"));
    }

    @Test
    void aMissingFileIsSaid() throws IOException {
        Files.delete(own().resolve("ambient.csv"));
        assertTrue(refusal().contains("ambient.csv"));
    }

    @Test
    void aMissingNumberIsSaid() throws IOException {
        replace("numbers.csv", "touch.voltage,", "touch.feeling,");
        assertTrue(refusal().contains("touch.voltage"));
    }

    @Test
    void aMissingHeadLineIsSaid() throws IOException {
        replace("ambient.csv", "# status:", "# maybe:");
        assertTrue(refusal().contains("status"));
    }

    @Test
    void aValueThatStandsTwiceIsRefused() throws IOException {
        replace("capacity.csv", "flat-70,6,C,47", "flat-70,6,C,47\nflat-70,6,C,48");
        assertTrue(refusal().contains("twice"));
    }

    @Test
    void theProgramsOwnIdIsNotTakenOver() throws IOException {
        Files.createDirectories(folder.resolve(RuleSets.DEFAULT));
        String said = String.valueOf(
                assertThrows(IllegalArgumentException.class, RuleSets::ids).getMessage());
        assertTrue(said.contains(RuleSets.DEFAULT), said);
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        System.setProperty(RuleSets.FOLDER, folder.resolve("nowhere").toString());
        assertTrue(String.valueOf(assertThrows(IllegalArgumentException.class, RuleSets::ids)
                        .getMessage())
                .contains("nowhere"));
    }

    @Test
    void aSlipIsSaidInTheLanguageOfTheProgram() throws IOException {
        replace("cables.csv", ",6,7.3,", ",6,seven,");
        Locale before = Locale.getDefault(Locale.Category.DISPLAY);
        try {
            Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMANY);
            String said = refusal();
            assertTrue(said.startsWith("Regeldaten ") && said.contains("cables.csv, Zeile 5, drop: „seven“ ist"), said);
            Files.delete(own().resolve("ambient.csv"));
            assertTrue(refusal().contains("lassen sich nicht lesen"), refusal());
            System.setProperty(RuleSets.FOLDER, folder.resolve("nowhere").toString());
            assertTrue(String.valueOf(assertThrows(IllegalArgumentException.class, RuleSets::ids)
                            .getMessage())
                    .startsWith("der Ordner der Regelwerke"));
        } finally {
            Locale.setDefault(Locale.Category.DISPLAY, before);
        }
    }
}
