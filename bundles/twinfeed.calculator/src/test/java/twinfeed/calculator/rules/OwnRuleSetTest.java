// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A user's own rule set in a folder: no code is needed for it, and a slip in it is said by file, row and column. */
class OwnRuleSetTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // filled by JUnit
    Path folder;

    private Path own() {
        return folder.resolve(OwnRules.ID);
    }

    @BeforeEach
    void copyTheStandardOne() throws IOException {
        OwnRules.copyInto(folder);
    }

    @AfterEach
    void forget() {
        OwnRules.forget();
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

    /** A slip in any table is refused, and the message says what is wrong and what would be right. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "cables.csv|,6,7.3,|,6,0,|row 5, drop: 0 is not above zero; give a number above zero",
                "cables.csv|,6,7.3,|,6,-7.3,|row 5, drop: -7.3 is not above zero; give a number above zero",
                "cables.csv|,6,7.3,|,6,1e999,|row 5, drop: 1e999 is not finite; give a number with a point",
                "cables.csv|copper\",1.5,29|copper\",1.0,29|row 2, size: flat-70 has this size twice; give each size once",
                "cables.csv|copper\",16,2.8|copper\",17,2.8|row 7, size: no resistance for it; give a size of conductors.csv",
                "cables.csv|flat-70,|# flat-70,|rule data cables: there is no cable; give at least one",
                "cables.csv|size,drop,cpc|size,drop,pe|row 1, cpc: the column is missing; give a column of this name",
                "devices.csv|fuse,,0.725|fuse,,1.01|row 10, factor: 1.01 is above 1; give a factor of at most 1",
                "devices.csv|,fuse,,0.725|,wire,,0.725|row 10, family: it is unknown; give breaker, rcbo or fuse",
                "devices.csv|,rewirable fuse to BS 3036,|,,|row 10, title: it is empty; give a word",
                "methods.csv|,yes,lift,100|,yes,raise,100|row 2, move: it is unknown; give lift, clip or no",
                "methods.csv|,no,clip,102|,nein,clip,102|row 5, insulated: \"nein\" is neither; give yes or no"
            })
    void aSlipInATableIsRefusedWithTheReason(String file, String right, String wrong, String reason)
            throws IOException {
        replace(file, right, wrong);
        String said = refusal();
        assertTrue(said.startsWith("rule data ") && said.contains(file.replace(".csv", "")), said);
        assertTrue(said.endsWith(reason), said);
    }

    @Test
    void itMayDifferFromTheStandardOne() throws IOException {
        replace("earthing.csv", "35,16", "35,18");
        replace("devices.csv", "fuse,,0.725,", "fuse,3,1,");
        RuleSet rules = RuleSets.find("north-isles-2030").orElseThrow();
        assertEquals("north-isles-2030", rules.id());
        assertEquals(16, rules.earthing().conductorMm2(16).orElseThrow());
        assertEquals(18, rules.earthing().conductorMm2(25).orElseThrow());
        assertEquals("if(S <= 16, S, 18)", rules.earthing().conductorExpression("S"));
        DeviceKind fuse = rules.devices().find("fuse-3036").orElseThrow();
        assertEquals(3, fuse.multiple().orElseThrow());
        assertEquals(1, fuse.cableFactor());
    }

    @Test
    void itKeepsItsOwnNamesInEveryLanguage() throws IOException {
        replace("devices.csv", "rewirable fuse to BS 3036", "fuse wire of the isles");
        RuleTitles german = new RuleTitles(RuleSets.find("north-isles-2030").orElseThrow(), Locale.GERMAN);
        assertEquals("fuse wire of the isles", german.device("fuse-3036"));
        assertEquals(
                "LS-Schalter, Charakteristik B", german.device("breaker-b"), "the same in English as the program's");
        assertEquals("clipped direct or buried in masonry", german.method("C"));
    }

    @Test
    void filesBesideTheFoldersAreNoRuleSets() throws IOException {
        Files.writeString(folder.resolve("read-me.txt"), "Our rules");
        assertEquals(List.of("bs7671-2018-a2", "iec60364-5-52", "north-isles-2030"), RuleSets.ids());
        assertTrue(RuleSets.find("read-me.txt").isEmpty());
    }
}
