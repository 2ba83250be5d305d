// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.isolation.IsolationRecord;
import twinfeed.diagnosis.text.FaultTexts;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Survey;

class InferenceTest {
    private static final FaultData DATA = FaultData.own();
    private static final String HEAD = "# source: the test\n# status: judgement\n# units: none\n"
            + "row,key,part,value,minutes,place,code,reason\n";

    private static FaultData read(String rows) {
        return FaultData.read("test", new ByteArrayInputStream((HEAD + rows).getBytes(StandardCharsets.UTF_8)));
    }

    private static ObservationAnswer yes(String key) {
        return new ObservationAnswer(key, true, ObservationAnswer.Origin.SAID);
    }

    /** Bayes' rule by hand: prior 1 % of a, likelihoods 0.9 and 0.05 give 0.009 / (0.009 + 0.0495). */
    @Test
    void bayesByHand() {
        FaultData data = read("part,a,,1,,,-,r\npart,supply,,49,,,-,r\npart,none,,50,,,-,r\n"
                + "observation,seen,,0.05,1,told,,r\nlikelihood,seen,a,0.9,,,,r\n"
                + "limit,doubles,,0.03,,,,r\nlimit,several,,0.5,,,,r\nlimit,settled,,0.9,,,,r\n");
        assertEquals(0.009 / 0.0585, Posterior.of(data, List.of(yes("seen"))).chance("a"), 1e-12);
        assertEquals(
                0.001 / (0.001 + 0.99 * 0.95),
                Posterior.of(data, List.of(new ObservationAnswer("seen", false, ObservationAnswer.Origin.SAID)))
                        .chance("a"),
                1e-12);
    }

    /** A fair coin that the fault decides gives one bit; an observation that says nothing gives none (Shannon). */
    @Test
    void aFairCoinGivesOneBit() {
        FaultData data = read("part,a,,2,,,-,r\npart,supply,,1,,,-,r\npart,none,,1,,,-,r\n"
                + "observation,decides,,0.000001,1,told,,r\nlikelihood,decides,a,0.999999,,,,r\n"
                + "observation,blind,,0.3,1,told,,r\n"
                + "limit,doubles,,0.03,,,,r\nlimit,several,,0.5,,,,r\nlimit,settled,,0.9,,,,r\n");
        Posterior none = Posterior.of(data, List.of());
        assertEquals(1, none.expectedInformation(data.observations().get("decides")), 1e-4);
        assertEquals(0, none.expectedInformation(data.observations().get("blind")), 1e-12);
    }

    @Test
    void chancesAddUpToOne() {
        Posterior posterior = Posterior.of(DATA, List.of(yes("someHeatButWeak"), yes("smellAtUnit")));
        assertEquals(
                1, posterior.ranked().stream().mapToDouble(RankedPart::chance).sum(), 1e-12);
    }

    @Test
    void twoFaultsAtOnceAreNotForcedIntoOne() {
        Survey survey = SampleVisits.survey();
        SampleVisits.isolate(survey);
        SampleVisits.elements(survey, 12.8, -1);
        SampleVisits.record(survey).setCoilOpen(true);
        Diagnosis diagnosis = Diagnosis.of(SampleVisits.evidence(survey), DATA);
        assertEquals(Diagnosis.Conclusion.SEVERAL, diagnosis.conclusion());
        assertEquals(
                Set.of("elements", "solenoid-valve"),
                Set.of(
                        diagnosis.posterior().pair().first(),
                        diagnosis.posterior().pair().second()));
    }

    @Test
    void oneFaultIsOne() {
        Diagnosis diagnosis = Diagnosis.of(SampleVisits.evidence(SampleVisits.full()), DATA);
        assertEquals(Diagnosis.Conclusion.PART, diagnosis.conclusion());
        assertEquals("elements", diagnosis.posterior().first().part());
        assertTrue(diagnosis.posterior().settled());
    }

    /** Where the feed's margin explains it, no part is blamed; where the margin is good, a part is. */
    @Test
    void theSupplyFindingsCount() {
        Survey survey = SampleVisits.survey("goesColdWhenTapOpens");
        Posterior fails = posterior(survey, Optional.of(true));
        Posterior passes = posterior(survey, Optional.of(false));
        assertEquals(FaultData.SUPPLY, fails.first().part());
        assertTrue(fails.chance(FaultData.SUPPLY) > 0.85, () -> String.valueOf(fails.ranked()));
        assertFalse(passes.first().part().equals(FaultData.SUPPLY), () -> String.valueOf(passes.ranked()));
    }

    @Test
    void noCoverComesOffWhereTheFeedExplainsIt() {
        Survey survey = SampleVisits.survey("goesColdWhenTapOpens");
        DATA.observations().values().stream()
                .filter(each -> each.place().safe() && !each.key().equals("goesColdWhenTapOpens"))
                .forEach(each -> SampleVisits.say(survey, each.key(), FaultAnswer.UNKNOWN));
        SupplyState weak = new SupplyState(Optional.of(true), Optional.empty());
        assertTrue(Diagnosis.of(Evidence.of(survey, SampleVisits.heater(), weak, DATA), DATA)
                .next()
                .isEmpty());
        assertTrue(Diagnosis.of(Evidence.of(survey, SampleVisits.heater(), SupplyState.UNKNOWN, DATA), DATA)
                .next()
                .orElseThrow()
                .opensCover());
    }

    private static Posterior posterior(Survey survey, Optional<Boolean> marginFails) {
        Evidence evidence =
                Evidence.of(survey, SampleVisits.heater(), new SupplyState(marginFails, Optional.empty()), DATA);
        return Diagnosis.of(evidence, DATA).posterior();
    }

    @Test
    void anAnswerUnknownIsAskedButSaysNothing() {
        Survey survey = SampleVisits.survey();
        SampleVisits.say(survey, "otherTapsWeak", FaultAnswer.UNKNOWN);
        Evidence evidence = SampleVisits.evidence(survey);
        assertEquals(List.of(), evidence.answers());
        assertTrue(evidence.asked().contains("otherTapsWeak"));
        assertEquals(
                Diagnosis.Conclusion.NOTHING_REPORTED,
                Diagnosis.of(evidence, DATA).conclusion());
    }

    @Test
    void anAnswerNoCounts() {
        Survey survey = SampleVisits.survey("coldOnEverySettingFlowGood");
        double before =
                Diagnosis.of(SampleVisits.evidence(survey), DATA).posterior().chance("cut-out");
        SampleVisits.say(survey, "cutOutOpen", FaultAnswer.NO);
        assertTrue(Diagnosis.of(SampleVisits.evidence(survey), DATA).posterior().chance("cut-out") < before / 2);
    }

    @Test
    void safeStepsComeBeforeTheCover() {
        Diagnosis fresh = Diagnosis.of(SampleVisits.evidence(SampleVisits.survey("noWaterSupplyGood")), DATA);
        assertTrue(fresh.next().orElseThrow().observation().place().safe());
    }

    @Test
    void aStepUnderTheCoverCountsTheIsolationOnce() {
        Survey survey = SampleVisits.survey("coldOnEverySettingFlowGood");
        DATA.observations().values().stream()
                .filter(each -> each.place().safe())
                .filter(each -> !each.key().equals("coldOnEverySettingFlowGood"))
                .forEach(each -> SampleVisits.say(survey, each.key(), FaultAnswer.UNKNOWN));
        NextStep shut = Diagnosis.of(SampleVisits.evidence(survey), DATA).next().orElseThrow();
        assertTrue(shut.opensCover());
        assertEquals(shut.observation().minutes() + DATA.limit("opening"), shut.minutes());
        SampleVisits.isolate(survey);
        NextStep open = Diagnosis.of(SampleVisits.evidence(survey), DATA).next().orElseThrow();
        assertEquals(open.observation().minutes(), open.minutes());
    }

    @Test
    void unknownObservationsAreNamed() {
        assertEquals(
                List.of("singsAtNight"),
                SampleVisits.evidence(SampleVisits.survey("singsAtNight")).unknown());
    }

    @Test
    void everyPartAndObservationHasItsWords() {
        DATA.partKeys().forEach(key -> assertTrue(FaultTexts.NAMES.has("part." + key), key));
        DATA.observations().keySet().forEach(key -> assertTrue(FaultTexts.NAMES.has("question." + key), key));
        IsolationRecord.PROCEDURE.forEach(key -> assertTrue(FaultTexts.NAMES.has("isolation." + key), key));
    }

    @Test
    void whatIsWrongInTheDataIsNamed() {
        String parts = "part,supply,,1,,,-,r\npart,none,,1,,,-,r\n";
        refused(parts + "observation,seen,,1.5,1,told,,r\n", "row 3, value");
        refused(parts + "observation,seen,,0.5,1,nowhere,,r\n", "row 3, place");
        refused(parts + "likelihood,seen,none,0.5,,,,r\n", "row 3, key");
        refused(parts + "observation,seen,,0.5,1,told,,\n", "row 3, reason");
        refused(parts + "part,none,,1,,,-,r\n", "row 3, key");
        refused(parts + "observation,seen,soon,0.5,1,told,,r\n", "row 3, part");
        refused(parts + "observation,seen,after:heard,0.5,1,told,,r\n", "no observation heard");
        refused(parts + "first,seen,heard,1,,,,r\n", "no observation seen");
        refused("part,supply,,x,,,-,r\n", "row 1, value");
        refused("part,supply,,1,,,-,r\n", "there is no part none");
    }

    private static void refused(String rows, String words) {
        String message =
                assertThrows(IllegalArgumentException.class, () -> read(rows)).getMessage();
        assertTrue(message.contains(words), message);
    }
}
