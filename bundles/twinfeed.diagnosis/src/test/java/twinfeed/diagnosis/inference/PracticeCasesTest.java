// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Survey;

/**
 * Observations with the part that the trade suspects first, some common practice, some from standards on appliances and installations and
 * from published guides; the file's last column says which. Each has to come out from those observations alone.
 */
class PracticeCasesTest {
    static Stream<CSVRecord> rows() {
        try (InputStream stream = PracticeCasesTest.class.getResourceAsStream("practice-cases.csv");
                Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .setCommentMarker('#')
                    .build()
                    .parse(reader)
                    .getRecords()
                    .stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Test
    void theCasesReachBeyondOneSource() {
        assertEquals(29, rows().count());
        assertTrue(
                rows().filter(row -> row.get("source").contains("EN 60335-1")).count() >= 2);
        assertTrue(rows().filter(row -> row.get("source").contains("BS 7671")).count() >= 2);
        assertTrue(
                rows().filter(row -> row.get("source").startsWith("published")).count() >= 3);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void thePartOfPracticeComesFirst(CSVRecord row) {
        Survey survey = SampleVisits.survey();
        for (String said : row.get("said").split(" ")) {
            boolean no = said.startsWith("!");
            SampleVisits.say(survey, no ? said.substring(1) : said, no ? FaultAnswer.NO : FaultAnswer.YES);
        }
        Evidence evidence = SampleVisits.evidence(survey);
        assertEquals(List.of(), evidence.unknown());
        List<String> ranked = new ArrayList<>(Diagnosis.of(evidence, FaultData.own()).posterior().ranked().stream()
                .map(RankedPart::part)
                .toList());
        for (String wanted : row.get("suspected").split(" ")) {
            Set<String> equals = Set.of(wanted.split("\\|"));
            List<String> first = ranked.subList(0, equals.size());
            assertEquals(equals, Set.copyOf(first), row.get("observation") + " (" + row.get("source") + ")");
            first.clear();
        }
    }

    /** Scale and low flow are looked for before the cut-out is blamed, cheapest first (common practice). */
    @Test
    void repeatedOperationOfTheCutOutAsksForItsCauseFirst() {
        asks(List.of("cutOutTripsRepeatedly"), "hoseBlocked", "kettling", "weakFlowHere", "littleFlowDifference");
    }

    /** A dead unit begins at the board, then cord and neon; not with "does the water run as usual" (common practice). */
    @Test
    void aDeadUnitBeginsAtTheBoard() {
        asks(List.of("deadNothing"), "deviceFoundOff", "cordNeonDark");
    }

    @Test
    void waterThatRunsOnIsToldApartByThePower() {
        asks(List.of("waterRunsOn"), "runsOnPowerOff");
    }

    private static void asks(List<String> complaint, String... order) {
        Survey survey = SampleVisits.survey(complaint.toArray(new String[0]));
        for (String key : order) {
            Diagnosis diagnosis = Diagnosis.of(SampleVisits.evidence(survey), FaultData.own());
            assertEquals(key, diagnosis.next().orElseThrow().observation().key());
            SampleVisits.say(survey, key, FaultAnswer.NO);
        }
        assertFalse(Diagnosis.of(SampleVisits.evidence(survey), FaultData.own())
                .next()
                .filter(step -> List.of(order).contains(step.observation().key()))
                .isPresent());
    }

    /** A unit that is wet, or whose device was found off, is not switched on to look at something. */
    @Test
    void aWetUnitIsNotSwitchedOn() {
        assertFalse(SampleVisits.evidence(SampleVisits.survey("leakFromCase")).mayBePowered());
        assertFalse(SampleVisits.evidence(SampleVisits.survey("deviceFoundOff")).mayBePowered());
        assertTrue(SampleVisits.evidence(SampleVisits.survey("dripsWhenOff")).mayBePowered());
    }

    /** Whether it trips at once is a question only where something trips. */
    @Test
    void aQuestionThatDoesNotAriseSaysNothing() {
        Posterior without = posterior("someHeatButWeak");
        Posterior with = posterior("someHeatButWeak", "tripsAtOnce");
        assertEquals(without.ranked(), with.ranked());
        assertTrue(posterior("rcdTrips", "tripsAtOnce").chance("element-leak")
                > posterior("rcdTrips").chance("element-leak"));
    }

    private static Posterior posterior(String... said) {
        return Diagnosis.of(SampleVisits.evidence(SampleVisits.survey(said)), FaultData.own())
                .posterior();
    }

    @Test
    void weakHeatSuspectsTheElementsBeforeTheCutOut() {
        List<String> ranked = posterior("someHeatButWeak").ranked().stream()
                .map(RankedPart::part)
                .toList();
        assertTrue(ranked.indexOf("elements") < ranked.indexOf("cut-out"));
    }
}
