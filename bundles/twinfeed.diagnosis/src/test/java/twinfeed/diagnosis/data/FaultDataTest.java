// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fault data as a firm may write them, row by row, and what is said where a row is wrong. */
class FaultDataTest {
    private static final String HEAD = "# source: the test\n# status: judgement\n# units: none\n"
            + "row,key,part,value,minutes,place,code,reason\n";
    private static final String PARTS = "part,supply,,1,,,-,r\npart,none,,1,,,-,r\n";

    private static FaultData read(String rows) {
        return FaultData.read("test", new ByteArrayInputStream((HEAD + rows).getBytes(StandardCharsets.UTF_8)));
    }

    private static void refused(String rows, String words) {
        String message =
                assertThrows(IllegalArgumentException.class, () -> read(rows)).getMessage();
        assertTrue(message.contains(words), message);
    }

    @Test
    void everyKindOfRow() {
        FaultData data = read(
                PARTS + "part,valve,,2,,,code-a  code-b -,opens often\n"
                        + "observation,dry,,0.1,0,told,,rare\nobservation,wet,powered,0.2,3,outside,,r\n"
                        + "observation,open,after:dry|wet powered,0.3,4,cover,,r\nobservation,weak,,0.4,0,feed,,r\n"
                        + "likelihood,dry,valve,0.9,,,,r\nfirst,dry,open,2,,,,r\nfirst,dry,wet,1,,,,r\nlimit,cure,,0.95,,,,r\n");
        assertEquals("the test", data.source());
        assertEquals("judgement", data.status());
        assertEquals(List.of("supply", "none", "valve"), data.partKeys());
        assertEquals(new FaultPart("valve", 2, List.of("code-a", "code-b"), "opens often"), data.part("valve"));
        assertEquals(List.of(), data.part("none").codes());
        assertEquals(0.5, data.prior("valve"));
        Observation dry = data.observation("dry").orElseThrow();
        assertEquals(0.9, dry.chance("valve"));
        assertEquals(0.1, dry.chance("supply"));
        assertEquals(0.9, dry.chance("supply", false));
        assertEquals(0.1, dry.chance("supply", true));
        assertEquals(ObservationStage.TOLD, dry.place());
        assertEquals(0, dry.minutes());
        assertFalse(dry.powered());
        Observation open = data.observation("open").orElseThrow();
        assertEquals(ObservationStage.COVER, open.place());
        assertEquals(Set.of("dry", "wet"), open.after());
        assertTrue(open.powered());
        assertEquals(4, open.minutes());
        assertTrue(open.arises("wet"::equals));
        assertFalse(open.arises("open"::equals));
        assertTrue(dry.arises("open"::equals));
        assertEquals(
                ObservationStage.FEED, data.observation("weak").orElseThrow().place());
        assertEquals(Map.of("dry", List.of("wet", "open")), data.first());
        assertEquals(0.95, data.limit("cure"));
        assertEquals(Set.of("dry", "weak"), data.unpowered().observations().keySet());
        assertEquals(List.of("supply", "none"), data.without(Set.of("valve")).partKeys());
        assertEquals(0.5, data.without(Set.of("valve")).prior("none"));
    }

    @Test
    void aRowThatStandsTwiceIsNamed() {
        String seen = "observation,seen,,0.5,1,told,,r\n";
        refused(PARTS + seen + seen, "row 4, key: seen stands twice");
        refused(PARTS + "limit,cure,,1,,,,r\nlimit,cure,,1,,,,r\n", "row 4, key: cure stands twice");
        String likely = "likelihood,seen,none,0.5,,,,r\n";
        refused(PARTS + seen + likely + likely, "row 5, key: none stands twice");
        String first = "first,seen,seen,1,,,,r\n";
        refused(PARTS + seen + first + first, "row 5, key: seen stands twice");
    }

    /** A chance of 0 or 1 would prove something for good. */
    @Test
    void aNumberOutOfItsRangeIsNamed() {
        refused(PARTS + "observation,seen,,0,1,told,,r\n", "row 3, value: 0.0 is no chance");
        refused(PARTS + "observation,seen,,1,1,told,,r\n", "row 3, value: 1.0 is no chance");
        refused(PARTS + "observation,seen,,0.5,-1,told,,r\n", "row 3, minutes: -1.0 is negative");
        refused("part,supply,,0,,,-,r\n", "row 1, value: 0.0 is not above 0");
        refused("part,supply,,NaN,,,-,r\n", "row 1, value");
        refused("part,supply,,1e999,,,-,r\n", "row 1, value: 1e999 is not finite");
    }

    @Test
    void whatIsNamedHasToStandInTheData() {
        String seen = "observation,seen,,0.5,1,told,,r\n";
        refused(
                PARTS + seen + "first,seen,heard,1,,,,r\n",
                "there is no observation heard that comes first after seen");
        refused(PARTS + seen + "likelihood,seen,valve,0.5,,,,r\n", "there is no part valve above");
        refused(PARTS + "observation,seen,after:,0.5,1,told,,r\n", "\"after:\" says nothing of an observation");
        refused(PARTS + "rule,seen,,0.5,1,told,,r\n", "\"rule\" is no kind of row");
        refused("part,none,,1,,,-,r\n", "there is no part supply");
        assertThrows(IllegalArgumentException.class, () -> read(PARTS).part("valve"));
        assertThrows(IllegalArgumentException.class, () -> read(PARTS).limit("cure"));
    }

    @Test
    void aFirmsOwnFileTakesThePlaceOfTheProgramsData(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("ours.csv");
        Files.writeString(file, HEAD + PARTS);
        assertSame(FaultData.own(), FaultData.current());
        System.setProperty(FaultData.FILE, file.toString());
        try {
            assertEquals("the test", FaultData.current().source());
            Files.writeString(file, HEAD + "part,none,,1,,,-,r\n");
            Path missing = folder.resolve("missing.csv");
            System.setProperty(FaultData.FILE, missing.toString());
            String message = assertThrows(IllegalArgumentException.class, FaultData::current)
                    .getMessage();
            assertTrue(message.contains("missing.csv: it cannot be read"), message);
        } finally {
            System.clearProperty(FaultData.FILE);
        }
        assertTrue(FaultData.own().parts().size() > 20);
    }
}
