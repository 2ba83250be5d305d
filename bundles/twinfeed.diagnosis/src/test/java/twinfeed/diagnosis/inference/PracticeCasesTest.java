// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.data.FaultData;

/**
 * Observations with the part that the trade suspects first. Common practice, no source; the file's last column says so for each
 * row. Each has to come out from that observation alone.
 */
class PracticeCasesTest {
    /** The observation that asks what a row of the file describes, and the parts that it names, in its order. */
    private static final Map<String, List<String>> WANTED = Map.of(
            "F1", List.of("shutsOffAndReturns", "solenoid-valve"),
            "F2", List.of("noWaterSupplyGood", "solenoid-valve"),
            "F3", List.of("littleFlowDifference", "flow-valve"),
            "F4", List.of("switchBodyWeeps", "pressure-switch"),
            "F5", List.of("coldOnEverySettingFlowGood", "cut-out", "pressure-switch"),
            "F6", List.of("halfHeatSlowestSetting", "elements"),
            "F7", List.of("someHeatButWeak", "elements"),
            "F8", List.of("cutOutTripsRepeatedly", "cut-out"),
            "F9", List.of("goesColdWhenTapOpens", "supply"));

    static Stream<CSVRecord> rows() {
        try (InputStream stream = PracticeCasesTest.class.getResourceAsStream("practice-cases.csv");
                Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .build()
                    .parse(reader)
                    .getRecords()
                    .stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Test
    void everyRowIsTested() {
        assertEquals(WANTED.keySet(), rows().map(row -> row.get("id")).collect(java.util.stream.Collectors.toSet()));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void thePartOfPracticeComesFirst(CSVRecord row) {
        List<String> wanted = WANTED.get(row.get("id"));
        Posterior posterior = Diagnosis.of(SampleVisits.evidence(SampleVisits.survey(wanted.get(0))), FaultData.own())
                .posterior();
        List<String> ranked = posterior.ranked().stream()
                .map(RankedPart::part)
                .limit(wanted.size() - 1L)
                .toList();
        assertEquals(wanted.subList(1, wanted.size()), ranked, row.get("observation") + " (" + row.get("source") + ")");
    }

    @Test
    void weakHeatSuspectsTheElementsBeforeTheCutOut() {
        Posterior posterior = Diagnosis.of(
                        SampleVisits.evidence(SampleVisits.survey("someHeatButWeak")), FaultData.own())
                .posterior();
        List<String> ranked = posterior.ranked().stream().map(RankedPart::part).toList();
        org.junit.jupiter.api.Assertions.assertTrue(ranked.indexOf("elements") < ranked.indexOf("cut-out"));
    }
}
