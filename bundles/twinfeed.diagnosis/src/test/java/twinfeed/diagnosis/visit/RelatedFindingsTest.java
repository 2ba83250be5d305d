// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.PricedVisits;
import twinfeed.diagnosis.SampleVisits;
import twinfeed.diagnosis.isolation.IsolationRecord;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;

/** What the supplies have to do with a fault, and what is said of a faulty isolation record. */
class RelatedFindingsTest {
    private static FaultSheet sheet(OptionAssessment present, String... symptoms) {
        return PricedVisits.desk(PricedVisits.survey(symptoms), present).sheet();
    }

    private static List<String> starts(OptionAssessment present, String... symptoms) {
        return sheet(present, symptoms).links().stream()
                .map(each -> each.split("[:,] ")[0])
                .toList();
    }

    @Test
    void aWeakHeatIsLinkedToALowVoltage() {
        OptionAssessment low = PricedVisits.with(CheckTopic.VOLTAGE_DROP, Outcome.FAILS, "7 % are lost.");
        List<String> link = List.of("The circuit costs part of the heat: 7 % are lost.");
        assertEquals(link, sheet(low, "someHeatButWeak").links());
        assertEquals(link, sheet(low, "halfHeatSlowestSetting").links());
        assertEquals(List.of(), sheet(low, "weakFlowHere").links());
        OptionAssessment good = PricedVisits.with(CheckTopic.VOLTAGE_DROP, Outcome.PASSES, "2 % are lost.");
        assertEquals(List.of(), sheet(good, "someHeatButWeak").links());
    }

    @Test
    void aTapThatTakesTheHeat() {
        assertEquals(
                List.of("By the water test the supply keeps the switch closed with a tap open"),
                starts(PricedVisits.with(CheckTopic.ACTIVATION, Outcome.PASSES, "Enough."), "goesColdWhenTapOpens"));
        assertEquals(
                List.of("Take the water test and the data of the switch"),
                starts(PricedVisits.present(), "goesColdWhenTapOpens"));
        assertEquals(
                List.of("Take the water test and the data of the switch"),
                starts(
                        PricedVisits.with(CheckTopic.RUNNING_PRESSURE, Outcome.PASSES, "Enough."),
                        "goesColdWhenTapOpens"),
                "the running pressure alone says nothing of the switch");
        assertEquals(
                List.of("Take the water test and the data of the switch"),
                starts(PricedVisits.with(CheckTopic.VOLTAGE_DROP, Outcome.PASSES, "2 %."), "goesColdWhenTapOpens"),
                "a sound circuit says nothing of the water");
    }

    @Test
    void aSmellKeepsItOff() {
        assertEquals(List.of("It smells burnt or is browned"), starts(PricedVisits.present(), "smellAtUnit"));
        assertEquals(
                List.of("Read the isolator's rating and compare it with the load"),
                starts(PricedVisits.present(), "isolatorOpenCircuit"));
        assertEquals(List.of("Water near live parts"), starts(PricedVisits.present(), "waterInCase"));
        assertEquals(List.of("Too hot is a danger"), starts(PricedVisits.present(), "hotterWhenTapOpens"));
    }

    /** An isolation of the earlier procedure does not count, and what was measured on it is said to be unsafe. */
    @Test
    void anEarlierIsolationDoesNotCount() {
        Survey survey = PricedVisits.survey("kettling");
        SampleVisits.isolate(survey, "testerProved", "provedDead");
        String notice =
                PricedVisits.desk(survey, PricedVisits.present()).sheet().isolationNotice();
        assertTrue(notice.startsWith("The ticks are from an earlier procedure"), notice);
        SampleVisits.record(survey).setCutOutCloses(true);
        notice = PricedVisits.desk(survey, PricedVisits.present()).sheet().isolationNotice();
        assertTrue(notice.startsWith("The ticks are from an earlier procedure"), notice);
        SampleVisits.isolate(survey, IsolationRecord.PROCEDURE.toArray(new String[0]));
        assertEquals(
                "", PricedVisits.desk(survey, PricedVisits.present()).sheet().isolationNotice());
    }

    @Test
    void anIsolationThatHasBegunInOrderNeedsNoNotice() {
        Survey survey = PricedVisits.survey("kettling");
        SampleVisits.isolate(survey, "showerOff");
        assertEquals(
                "", PricedVisits.desk(survey, PricedVisits.present()).sheet().isolationNotice());
    }

    /** An isolator of which nobody could tell is not said to be good enough. */
    @Test
    void anIsolatorOfUnknownRating() {
        OptionAssessment open = PricedVisits.with(CheckTopic.ISOLATOR_RATING, Outcome.CANNOT_TELL, "Not read.");
        assertEquals(List.of("Read the isolator's rating and compare it with the load"), starts(open, "isolatorHot"));
    }

    /** From a half, a tenth and a hundredth on (judgement). */
    @Test
    void aChanceInAWord() {
        assertEquals("likely", likelihood(0.5));
        assertEquals("possible", likelihood(0.49));
        assertEquals("possible", likelihood(0.1));
        assertEquals("unlikely", likelihood(0.09));
        assertEquals("unlikely", likelihood(0.01));
        assertEquals("remote", likelihood(0.009));
    }

    private static String likelihood(double chance) {
        return new FaultSheet.Cause("hose", "hose", 0.1, chance, "", List.of()).likelihood();
    }
}
