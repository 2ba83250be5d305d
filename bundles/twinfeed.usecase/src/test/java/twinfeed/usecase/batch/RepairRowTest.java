// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.search.WorkCost;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.diagnosis.visit.FaultSheet.Answer;
import twinfeed.diagnosis.visit.FaultSheet.Cause;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobFactory;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;

/** Of a dwelling where something is complained of the list says what it is and what to do. */
final class RepairRowTest {
    private static final TwinfeedService SERVICE = new TwinfeedService(List.of());
    private static final RepairRow ROW = new RepairRow(Locale.UK);

    private static BigDecimal pounds(String amount) {
        return new BigDecimal(amount);
    }

    private static RepairAdvice advice(String total, String... newTotals) {
        return new RepairAdvice(
                "GBP",
                List.of(),
                pounds("80.00"),
                pounds("40.00"),
                pounds(total),
                5,
                List.of(newTotals).stream()
                        .map(each -> new RepairAdvice.Replacement(
                                "h95", "Heater 9.5 kW", pounds("318.50"), pounds("10.00"), pounds(each), false))
                        .toList(),
                null,
                null,
                "Repair it.",
                List.of(),
                List.of());
    }

    private static FaultSheet faults(String conclusion, List<Cause> causes, @Nullable RepairAdvice repair) {
        return new FaultSheet(
                "Heater 7.5 kW",
                conclusion,
                "The coil has failed.",
                causes,
                0,
                null,
                List.of(new Answer("kettling", "Does it hum?", "yes", "said", "")),
                List.of(),
                List.of(),
                "",
                List.of(),
                List.of(),
                List.of(),
                repair,
                List.of(),
                0,
                "",
                List.of());
    }

    private static FaultSheet coil(@Nullable RepairAdvice repair) {
        return faults("part", List.of(new Cause("coil", "Coil", 0.1, 0.9, "why", List.of())), repair);
    }

    private static Dwelling dwelling(@Nullable FaultSheet faults, String... symptoms) {
        Job job = JobFactory.eINSTANCE.createJob();
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        for (String key : symptoms) {
            Symptom symptom = SurveyFactory.eINSTANCE.createSymptom();
            symptom.setKey(key.replace("!", ""));
            if (key.startsWith("!")) {
                symptom.setAnswer(FaultAnswer.NO);
            }
            job.getSurvey().getSymptoms().add(symptom);
        }
        OpenedJob opened =
                new OpenedJob(Path.of("mill.job"), job, CatalogueFactory.eINSTANCE.createCatalogue(), List.of());
        AssessedJob judged = SERVICE.judgeCandidates(opened, List.of(), WorkCost.BY_COUNT, Locale.UK);
        return new Dwelling(7, "Mill Row 2", List.of(), judged, null, "", faults);
    }

    @Test
    void whereNothingIsComplainedOfThereIsNoRow() {
        Dwelling quiet = dwelling(coil(null), "!kettling");
        assertEquals(List.of(), ROW.rows(quiet));
        assertEquals("", ROW.advice(quiet));
        assertEquals(0, RepairRow.count(quiet));
    }

    @Test
    void theRowHasTheComplaintsInWordsAndBothPrices() {
        Dwelling dwelling = dwelling(coil(advice("120.00", "328.50")), "kettling", "weakFlowHere");
        assertEquals(2, RepairRow.count(dwelling));
        assertEquals(
                List.of(List.of(
                        7,
                        "Mill Row 2",
                        "Does it hum?; weakFlowHere",
                        "The coil has failed.",
                        "repair first: Coil",
                        pounds("80.00"),
                        pounds("318.50"),
                        "Repair it.")),
                ROW.rows(dwelling));
    }

    @Test
    void whatIsNotKnownIsLeftOpen() {
        List<@Nullable Object> unpriced =
                ROW.rows(dwelling(coil(null), "kettling")).get(0);
        assertEquals(java.util.Arrays.asList(null, null, ""), unpriced.subList(5, 8));
        List<@Nullable Object> noNew =
                ROW.rows(dwelling(coil(advice("120.00")), "kettling")).get(0);
        assertEquals(java.util.Arrays.asList(pounds("80.00"), null, "Repair it."), noNew.subList(5, 8));
        List<@Nullable Object> noUnit = ROW.rows(dwelling(null, "kettling")).get(0);
        assertEquals(
                java.util.Arrays.asList("kettling", "", "no unit is described: find the fault on site", null, null, ""),
                noUnit.subList(2, 8));
    }

    @Test
    void theAdviceFollowsTheCheaperTotal() {
        assertEquals("repair first: Coil", ROW.advice(dwelling(coil(advice("328.50", "328.50")), "kettling")));
        assertEquals(
                "replace rather than repair: Coil", ROW.advice(dwelling(coil(advice("328.51", "328.50")), "kettling")));
        assertEquals("repair first: Coil", ROW.advice(dwelling(coil(advice("999.00")), "kettling")));
    }

    @Test
    void aSupplyOrAnUnknownCauseIsNoReasonForAPart() {
        assertEquals(
                "the supply, not the unit",
                ROW.advice(dwelling(faults("supply", List.of(), advice("1.00")), "kettling")));
        assertEquals("find the fault on site", ROW.advice(dwelling(coil(null), "kettling")));
        assertEquals(
                "find the fault on site", ROW.advice(dwelling(faults("open", List.of(), advice("1.00")), "kettling")));
    }
}
