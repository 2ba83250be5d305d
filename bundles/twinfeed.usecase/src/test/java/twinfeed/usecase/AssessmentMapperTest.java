// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Check;
import twinfeed.calculator.circuit.CircuitCalculator;
import twinfeed.calculator.flow.FlowCalculator;
import twinfeed.calculator.pressure.PressureCalculator;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;

/** The model says all that the calculators answered: whoever shows results needs nothing beside it. */
class AssessmentMapperTest {
    private static final List<Calculator> CALCULATORS =
            List.of(new FlowCalculator(), new PressureCalculator(), new CircuitCalculator());

    private static AssessedJob judged;

    @BeforeAll
    static void judgeTheDemonstration() {
        judged = service().quickAssess(service().open(Demo.FOLDER.resolve("alder-beck.job"), null), Locale.UK);
    }

    private static TwinfeedService service() {
        return new TwinfeedService(CALCULATORS);
    }

    private static List<Finding> findings(Outcome outcome) {
        List<Finding> found = new ArrayList<>();
        for (OptionAssessment option : judged.record().getOptions()) {
            option.getFindings().stream()
                    .filter(finding -> finding.getOutcome() == outcome)
                    .forEach(found::add);
        }
        assertTrue(!found.isEmpty(), "no finding of the demonstration is " + outcome);
        return found;
    }

    private static Check check(Finding finding) {
        return CALCULATORS.stream()
                .flatMap(calculator -> calculator.descriptor().checks().stream())
                .filter(check -> check.key().equals(finding.getKey()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void findingNamesTheReadingsThatItsCheckAsksFor() {
        for (Finding finding : findings(Outcome.PASSES)) {
            assertEquals(check(finding).needs(), finding.getNeeds(), finding.getKey());
        }
    }

    @Test
    void missingReadingHasItsPathBesideItsName() {
        OpenedJob opened = service().open(Demo.FOLDER.resolve("alder-beck.job"), null);
        opened.job().getSurvey().getWater().getTest().setStaticPressure(null);
        Finding open = service().quickAssess(opened, Locale.UK).record().getOptions().get(0).getFindings().stream()
                .filter(finding -> finding.getOutcome() == Outcome.CANNOT_TELL)
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("survey.water.test.staticPressure"), open.getMissingPaths());
        assertEquals(List.of("static pressure"), open.getMissing());
    }

    /** The segment in the loft carries too little under its insulation, and a larger cable mends that. */
    @Test
    void failingCapacityNamesTheSegmentAndWhatItsCheckOffers() {
        Finding capacity = findings(Outcome.FAILS).stream()
                .filter(finding -> finding.getKey().equals("circuit.capacity"))
                .findFirst()
                .orElseThrow();
        assertEquals("loft, under insulation", capacity.getSubject());
        assertTrue(
                capacity.getOffers().stream().anyMatch(offer -> offer.contains("mm²")), capacity.getOffers()::toString);
    }

    @Test
    void passingCheckOffersNothing() {
        findings(Outcome.PASSES).forEach(finding -> assertEquals(List.of(), finding.getOffers(), finding.getKey()));
    }

    @Test
    void inBriefOnlyWorkingsAndCurvesAreLeftOut() {
        OpenedJob opened = service().open(Demo.FOLDER.resolve("alder-beck.job"), null);
        Assessment whole = service().judge(opened, null, null, Locale.UK).record();
        int steps = 0;
        for (OptionAssessment option : whole.getOptions()) {
            for (Finding finding : option.getFindings()) {
                steps += finding.getSteps().size();
                withoutWorking(finding);
            }
            option.getAfterWork().forEach(AssessmentMapperTest::withoutWorking);
        }
        assertTrue(steps > 1000, "the whole record has only " + steps + " steps");
        Assessment brief = service().judgeInBrief(opened, null, Locale.UK).record();
        assertTrue(EcoreUtil.equals(whole, brief));
    }

    private static void withoutWorking(Finding finding) {
        finding.getSteps().clear();
        finding.getSeries().clear();
    }
}
