// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Assumption;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.RemedyItem;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** Surveys and assessments written by hand: pricing takes them as they come. */
public final class Samples {
    private static final AssessmentFactory MAKE = AssessmentFactory.eINSTANCE;

    private Samples() {}

    /** A survey whose one cable segment is known with this confidence. */
    public static Survey survey(Confidence confidence) {
        SurveyFactory make = SurveyFactory.eINSTANCE;
        Survey survey = make.createSurvey();
        survey.setSite(make.createSite());
        survey.setElectricity(make.createElectricalFeed());
        survey.getElectricity().setCircuit(make.createCircuit());
        CableSegment segment = make.createCableSegment();
        segment.setName("board to shower");
        segment.setMethod("C");
        segment.setConfidence(confidence);
        survey.getElectricity().getCircuit().getSegments().add(segment);
        return survey;
    }

    /** The present unit, which fails; one heater that suits, one that suits with a new cable, one that does not, one open. */
    public static Assessment assessment() {
        Assessment assessment = MAKE.createAssessment();
        assessment.setRules("Invented wiring rules");
        assessment.setRulesNote("Check against the current edition of the wiring rules.");
        Assumption assumption = MAKE.createAssumption();
        assumption.setText("Winter intake taken as 5 °C (common practice)");
        assessment.getAssumptions().add(assumption);
        OptionAssessment present = option("h85", "Heater 8.5 kW, two-element", 8.5, Verdict.DOES_NOT_SUIT);
        present.setPresent(true);
        present.setBinding("pressure.switch");
        present.getFindings()
                .add(finding("pressure.switch", Outcome.FAILS, "It goes cold when the kitchen tap opens."));
        assessment.getOptions().add(present);
        assessment.getOptions().add(option("h75", "Heater 7.5 kW, two-element", 7.5, Verdict.SUITS));
        OptionAssessment cable = option("h95", "Heater 9.5 kW, two-element", 9.5, Verdict.SUITS_WITH_WORK);
        cable.getRemedies().add(newCable());
        assessment.getOptions().add(cable);
        OptionAssessment unsuitable = option("h105s", "Heater 10.5 kW, stabilised", 10.5, Verdict.DOES_NOT_SUIT);
        unsuitable
                .getFindings()
                .add(finding("circuit.cable", Outcome.FAILS, "The cable carries 36 A, 43.8 A are needed."));
        assessment.getOptions().add(unsuitable);
        OptionAssessment open = option("h108", "Heater 10.8 kW, single-element", 10.8, Verdict.CANNOT_TELL);
        Finding missing = finding("pressure.switch", Outcome.CANNOT_TELL, "Cannot tell: missing make pressure.");
        missing.getMissing().add("make pressure of the heater's switch");
        open.getFindings().add(missing);
        assessment.getOptions().add(open);
        return assessment;
    }

    /** A new 10 mm² cable of 12.5 m with its labour. */
    public static Remedy newCable() {
        return remedy("cable-10-all", "Replace the cable by 10 mm²", "cable-10", "12.5", "task-run-cable", "12.5");
    }

    /** A remedy from codes and quantities in turn. */
    public static Remedy remedy(String id, String title, String... codesAndQuantities) {
        Remedy remedy = MAKE.createRemedy();
        remedy.setId(id);
        remedy.setTitle(title);
        for (int i = 0; i < codesAndQuantities.length; i += 2) {
            RemedyItem item = MAKE.createRemedyItem();
            item.setCode(codesAndQuantities[i]);
            item.setQuantity(new BigDecimal(codesAndQuantities[i + 1]));
            remedy.getItems().add(item);
        }
        return remedy;
    }

    /** An option. */
    public static OptionAssessment option(String id, String title, double powerKw, Verdict verdict) {
        OptionAssessment option = MAKE.createOptionAssessment();
        option.setHeaterId(id);
        option.setTitle(title);
        option.setPresent(false);
        option.setPowerKw(powerKw);
        option.setVerdict(verdict);
        return option;
    }

    /** A finding. */
    public static Finding finding(String key, Outcome outcome, String text) {
        Finding finding = MAKE.createFinding();
        finding.setKey(key);
        finding.setTitle(key);
        finding.setText(text);
        finding.setKind(FindingClass.PERFORMANCE);
        finding.setOutcome(outcome);
        return finding;
    }
}
