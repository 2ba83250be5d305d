// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;

/** The demonstration's heaters carry what their instructions and papers say, and the checks read it. */
class DemoHeatersTest {
    private static final TwinfeedService OFFICE = TwinfeedService.onClassPath();

    private static OpenedJob job(String heater) {
        OpenedJob job = OFFICE.open(Run.DEMO.resolve("alder-beck.job"), null);
        job.job().getSurvey().getCandidates().clear();
        job.job().getSurvey().getCandidates().add(heater);
        return job;
    }

    private static WorkPlan plan(OpenedJob job, String heater) {
        return OFFICE.judge(job, OFFICE.book(Run.DEMO.resolve("prices.csv")), heater, Locale.UK).plans().stream()
                .filter(plan -> !plan.before().candidate().present())
                .findFirst()
                .orElseThrow();
    }

    private static Finding finding(WorkPlan plan, String check) {
        return plan.before().finding(check).orElseThrow();
    }

    @Test
    void everyHeaterSaysItsGuaranteeItsCableAndItsDevice() {
        for (Heater heater : job("h85").catalogue().getHeaters()) {
            assertNotNull(heater.getGuaranteeYears(), heater.getId());
            assertTrue(
                    heater.getMinimumConductor().si()
                            <= heater.getMaximumConductor().si(),
                    heater.getId());
            double currentA = heater.getPower().si() / heater.getVoltage().si();
            assertTrue(heater.getMaximumDevice().si() >= currentA, heater.getId());
        }
    }

    /** 6 mm² lies in the house, the instructions of the 10.5 kW heater ask for 10 mm². */
    @Test
    void theSmallestConductorOfTheInstructionsIsAsked() {
        WorkPlan plan = plan(job("h105"), "h105");
        Finding smallest = finding(plan, "circuit.smallestConductor");
        assertEquals(Outcome.FAILS, smallest.outcome());
        assertTrue(smallest.remedies().stream().map(Remedy::id).toList().contains("cable-10"));
        assertEquals(
                Outcome.PASSES,
                finding(plan(job("h85"), "h85"), "circuit.smallestConductor").outcome());
    }

    @Test
    void aRecalledHeaterIsNotFitted() {
        WorkPlan plan = plan(job("h108"), "h108");
        assertEquals(Outcome.FAILS, finding(plan, "circuit.recall").outcome());
        assertEquals(Verdict.DOES_NOT_SUIT, plan.verdict());
        assertTrue(plan.unmended().contains("circuit.recall"), plan.unmended().toString());
    }

    /** The unit that is there is 11 years old, and two years were guaranteed. */
    @Test
    void theGuaranteeOfTheUnitThatIsThereIsCounted() {
        OpenedJob job = job("h85");
        assertEquals("", present(job).variant());
        job.job().getSurvey().getUnit().setAge(1);
        assertEquals("valid", present(job).variant());
    }

    private static Finding present(OpenedJob job) {
        List<Finding> findings =
                OFFICE.judge(job, OFFICE.book(Run.DEMO.resolve("prices.csv")), null, Locale.UK).plans().stream()
                        .filter(plan -> plan.before().candidate().present())
                        .findFirst()
                        .orElseThrow()
                        .before()
                        .findings();
        return findings.stream()
                .filter(each -> each.check().key().equals("circuit.guarantee"))
                .findFirst()
                .orElseThrow();
    }
}
