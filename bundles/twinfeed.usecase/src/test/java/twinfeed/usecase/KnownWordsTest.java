// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.faults.FaultsCalculator;
import twinfeed.calculator.pressure.PressureCalculator;
import twinfeed.model.io.InputProblem;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.FaultFinding;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.IsolationTick;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.units.Ratio;

/** Words of a survey that only the calculators and the wiring rules know; without the calculator nobody can tell. */
class KnownWordsTest {
    private static final List<Calculator> CALCULATORS = List.of(new PressureCalculator(), new FaultsCalculator());

    private static List<InputProblem> problems(List<Calculator> calculators, Consumer<Survey> change) {
        Survey survey = new TwinfeedService(List.of())
                .open(Demo.FOLDER.resolve("alder-beck.job"), null)
                .job()
                .getSurvey();
        change.accept(survey);
        List<InputProblem> problems = new ArrayList<>();
        new KnownWords("house.job", calculators, problems).check(survey);
        return problems;
    }

    /** The one word that is refused, with the place where it stands. */
    private static String refused(Consumer<Survey> change) {
        List<InputProblem> problems = problems(CALCULATORS, change);
        assertEquals(1, problems.size(), problems.toString());
        InputProblem problem = problems.get(0);
        assertEquals("house.job", problem.file());
        return problem.element() + " " + problem.reading() + ": " + problem.right();
    }

    private static void symptom(Survey survey, String key) {
        Symptom symptom = SurveyFactory.eINSTANCE.createSymptom();
        symptom.setKey(key);
        survey.getSymptoms().add(symptom);
    }

    private static void tick(Survey survey, String step) {
        IsolationTick tick = SurveyFactory.eINSTANCE.createIsolationTick();
        tick.setStep(step);
        FaultFinding finding = survey.getFaultFinding() == null
                ? SurveyFactory.eINSTANCE.createFaultFinding()
                : survey.getFaultFinding();
        survey.setFaultFinding(finding);
        finding.getIsolation().add(tick);
    }

    private static Fitting fitting(Survey survey) {
        return survey.getWater().getSegments().get(0).getFittings().get(0);
    }

    private static CableSegment cable(Survey survey) {
        return survey.getElectricity().getCircuit().getSegments().get(0);
    }

    @Test
    void theDemonstrationHasKnownWordsOnly() {
        assertEquals(List.of(), problems(CALCULATORS, survey -> {}));
    }

    @Test
    void aSymptomIsOneOfTheQuestionsOfFaultFinding() {
        assertTrue(refused(survey -> symptom(survey, "isolatrHot")).contains("did you mean isolatorHot?"));
        assertEquals(List.of(), problems(CALCULATORS, survey -> symptom(survey, "isolatorHot")));
        assertEquals(List.of(), problems(List.of(), survey -> symptom(survey, "isolatrHot")), "nobody knows the list");
    }

    @Test
    void aFittingIsOneOfTheTableUnlessItsLossIsKnown() {
        assertTrue(refused(survey -> fitting(survey).setKind("stop-valv")).contains("did you mean stop-valve?"));
        assertEquals(List.of(), problems(CALCULATORS, survey -> {
            fitting(survey).setKind("anything");
            fitting(survey).setK(Ratio.valueOf("2.5"));
        }));
    }

    @Test
    void devicesAndCablesAreThoseOfTheWiringRules() {
        String device = refused(
                survey -> survey.getElectricity().getCircuit().getDevice().setKind("breaker-bq"));
        assertTrue(
                device.startsWith("survey.electricity.circuit.device.kind breaker-bq: did you mean breaker-b?"),
                device);
        assertTrue(refused(survey -> cable(survey).setMethod("CC")).contains(".method CC"));
        assertTrue(refused(survey -> cable(survey).setCable("none-such")).contains(".cable none-such"));
    }

    /** That nobody knows the rules is said by itself. */
    @Test
    void underUnknownRulesNoWordIsWrong() {
        assertEquals(List.of(), problems(CALCULATORS, survey -> {
            survey.setRules("none-such");
            cable(survey).setMethod("CC");
            survey.getElectricity().getCircuit().getDevice().setKind("breaker-bq");
        }));
        assertTrue(refused(survey -> {
                    survey.setRules("bs7671-2018-a2");
                    cable(survey).setMethod("CC");
                })
                .contains(".method CC"));
    }

    @Test
    void aStepOfTheIsolationIsOneOfItsListOrOfEarlierFiles() {
        assertTrue(refused(survey -> tick(survey, "isolatorOpn")).contains("did you mean isolatorOpen?"));
        assertEquals(List.of(), problems(CALCULATORS, survey -> {
            tick(survey, "isolatorOpen");
            tick(survey, "provedDead");
        }));
    }
}
