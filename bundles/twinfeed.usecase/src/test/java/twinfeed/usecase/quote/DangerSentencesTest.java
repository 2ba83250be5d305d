// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.OpenedJob;

/** What the quote says before anything else. */
final class DangerSentencesTest {
    private final Assessment assessment = AssessmentFactory.eINSTANCE.createAssessment();

    private OptionAssessment option(boolean present) {
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        option.setPresent(present);
        assessment.getOptions().add(option);
        return option;
    }

    private static void finding(OptionAssessment option, FindingClass kind, Outcome outcome, String title) {
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setKind(kind);
        finding.setOutcome(outcome);
        finding.setTitle(title);
        finding.setText("too slow");
        option.getFindings().add(finding);
    }

    @Test
    void everySafetyCheckThatThePresentUnitFailsIsSaidOnce() {
        OptionAssessment present = option(true);
        finding(present, FindingClass.SAFETY, Outcome.FAILS, "RCD");
        finding(present, FindingClass.SAFETY, Outcome.FAILS, "RCD");
        finding(present, FindingClass.SAFETY, Outcome.PASSES, "Earth");
        finding(present, FindingClass.ADVICE, Outcome.FAILS, "Comfort");
        finding(option(false), FindingClass.SAFETY, Outcome.FAILS, "Another unit");
        assertEquals(List.of("RCD: too slow"), DangerSentences.failed(assessment));
    }

    private static Survey smelling() {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        Symptom symptom = SurveyFactory.eINSTANCE.createSymptom();
        symptom.setKey("smellAtUnit");
        survey.getSymptoms().add(symptom);
        return survey;
    }

    @Test
    void whatWasReportedStandsBesideWhatFails() {
        Survey survey = smelling();
        List<String> reported = DangerSentences.of(survey, Locale.UK);
        assertEquals(1, reported.size());
        assertTrue(DangerSentences.of(SurveyFactory.eINSTANCE.createSurvey(), Locale.UK)
                .isEmpty());
        finding(option(true), FindingClass.SAFETY, Outcome.FAILS, "RCD");
        OpenedJob house = JudgedHouse.JUDGED.opened();
        OpenedJob opened = new OpenedJob(house.file(), EcoreUtil.copy(house.job()), house.catalogue(), List.of());
        opened.job().setSurvey(survey);
        AssessedJob judged = new AssessedJob(opened, JudgedHouse.JUDGED.assessed(), List.of(), assessment);
        assertEquals(List.of("RCD: too slow", reported.get(0)), DangerSentences.all(judged, Locale.UK));
    }
}
