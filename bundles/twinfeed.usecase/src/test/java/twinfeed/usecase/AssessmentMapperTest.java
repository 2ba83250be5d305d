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
import twinfeed.model.survey.Survey;
import twinfeed.units.Pressure;

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
    void workingsAreWholeHoweverTheRecordIsFirstGoneThrough() {
        OpenedJob opened = service().open(Demo.FOLDER.resolve("alder-beck.job"), null);
        Assessment asked = service().judge(opened, null, null, Locale.UK).record();
        int steps = 0;
        int curves = 0;
        for (OptionAssessment option : asked.getOptions()) {
            for (Finding finding : option.getFindings()) {
                steps += finding.getSteps().size();
                curves += finding.getSeries().size();
            }
        }
        assertTrue(steps > 1000, "the whole record has only " + steps + " steps");
        assertTrue(curves > 10, "the whole record has only " + curves + " curves");
        Assessment unread = service().judge(opened, null, null, Locale.UK).record();
        assertTrue(EcoreUtil.equals(asked, EcoreUtil.copy(unread)));
        Assessment compared = service().judge(opened, null, null, Locale.UK).record();
        assertTrue(EcoreUtil.equals(asked, compared));
    }

    /** The window edits its survey while what was said of it before still stands on the screen. */
    @Test
    void workingAskedForAfterAnEditIsThatOfTheJudgedHouse() {
        OpenedJob opened = service().open(Demo.FOLDER.resolve("alder-beck.job"), null);
        Assessment first =
                EcoreUtil.copy(service().judge(opened, null, null, Locale.UK).record());
        Assessment late = service().judge(opened, null, null, Locale.UK).record();
        Survey survey = opened.job().getSurvey();
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("1.1 bar"));
        survey.getElectricity().getCircuit().getSegments().clear();
        assertTrue(EcoreUtil.equals(first, late));
    }

    @Test
    void workingsTakenAwayStayAway() {
        OpenedJob opened = service().open(Demo.FOLDER.resolve("alder-beck.job"), null);
        Finding finding = service()
                .quickAssess(opened, Locale.UK)
                .record()
                .getOptions()
                .get(0)
                .getFindings()
                .get(0);
        finding.getSteps().clear();
        assertEquals(List.of(), finding.getSteps());
    }
}
