// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.SurveyFactory;

class UrgencyTest {
    private static Assessment of(Verdict verdict, FindingClass kind, Outcome outcome) {
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setKind(kind);
        finding.setOutcome(outcome);
        OptionAssessment present = AssessmentFactory.eINSTANCE.createOptionAssessment();
        present.setPresent(true);
        present.setVerdict(verdict);
        present.getFindings().add(finding);
        Assessment all = AssessmentFactory.eINSTANCE.createAssessment();
        all.getOptions().add(present);
        return all;
    }

    @ParameterizedTest
    @CsvSource({
        "DOES_NOT_SUIT, SAFETY, FAILS, SAFETY",
        "CANNOT_TELL, SAFETY, FAILS, SAFETY",
        "SUITS, SAFETY, PASSES, SOUND",
        "CANNOT_TELL, PERFORMANCE, CANNOT_TELL, OPEN",
        "NOT_CHECKED, PERFORMANCE, CANNOT_TELL, OPEN",
        "DOES_NOT_SUIT, PERFORMANCE, FAILS, UNSUITED",
        "SUITS_WITH_WORK, PERFORMANCE, FAILS, UNSUITED"
    })
    void dangerComesFirst(Verdict verdict, FindingClass kind, Outcome outcome, Urgency urgency) {
        assertEquals(urgency, Urgency.of(of(verdict, kind, outcome), SurveyFactory.eINSTANCE.createSurvey()));
    }

    @Test
    void aDwellingWithoutAUnitIsOpen() {
        assertEquals(
                Urgency.OPEN,
                Urgency.of(AssessmentFactory.eINSTANCE.createAssessment(), SurveyFactory.eINSTANCE.createSurvey()));
    }

    private static OptionAssessment failing(String... keys) {
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        for (String key : keys) {
            Finding finding = AssessmentFactory.eINSTANCE.createFinding();
            finding.setKey(key);
            finding.setKind(FindingClass.SAFETY);
            finding.setOutcome(Outcome.FAILS);
            option.getFindings().add(finding);
        }
        return option;
    }

    /** Without a unit the house itself is unsafe only by what fails with every heater: a cable may be too thin for the strongest alone. */
    @Test
    void withoutAUnitOnlyWhatEveryHeaterFailsIsADangerNow() {
        Assessment all = AssessmentFactory.eINSTANCE.createAssessment();
        all.getOptions().add(failing("cable", "earth"));
        all.getOptions().add(failing("earth", "device"));
        assertEquals(
                java.util.List.of("earth"),
                Urgency.dangers(all).stream().map(Finding::getKey).toList());
        assertEquals(Urgency.SAFETY, Urgency.of(all, SurveyFactory.eINSTANCE.createSurvey()));
        all.getOptions().get(0).getFindings().remove(1);
        assertEquals(Urgency.OPEN, Urgency.of(all, SurveyFactory.eINSTANCE.createSurvey()));
    }
}
