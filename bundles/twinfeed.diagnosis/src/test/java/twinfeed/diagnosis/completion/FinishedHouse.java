// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.completion;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.SampleHouse;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.job.Completion;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobFactory;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Pressure;

/** An invented house in which the work is finished: its readings, and what calculators would have found in it. */
final class FinishedHouse {
    final Survey house = SampleHouse.fed("240 V");
    final Heater heater = SampleHouse.heater("8.5 kW", "240 V", "4.5 kW", "4.0 kW");
    final OptionAssessment judged = AssessmentFactory.eINSTANCE.createOptionAssessment();
    final OptionAssessment limits = AssessmentFactory.eINSTANCE.createOptionAssessment();
    final Map<String, String> values = new LinkedHashMap<>();

    FinishedHouse() {
        house.getElectricity().setCircuit(SurveyFactory.eINSTANCE.createCircuit());
        ResidualDevice device = SurveyFactory.eINSTANCE.createResidualDevice();
        device.setKind(RcdKind.RCBO);
        house.getElectricity().getCircuit().setRcd(device);
        heater.setMinimumRunningPressure(Pressure.valueOf("0.7 bar"));
    }

    /** Readings as they are where all is well. */
    FinishedHouse measured() {
        enter("cpcContinuous", "true").enter("line", "0.21 ohm").enter("bonding", "0.04 ohm");
        enter("insulation", "50 Mohm").enter("elements", "6.8 ohm");
        enter("polaritySupply", "true").enter("polarity", "true");
        enter("externalLoop", "0.30 ohm").enter("loop", "0.52 ohm").enter("prospectiveFault", "1.2 kA");
        enter("residualTime", "28 ms").enter("residualButton", "true").enter("loadedVoltage", "232 V");
        enter("runningPressure", "1.2 bar").enter("flow", "3.6 L/min").enter("intake", "10 °C");
        return enter("outlet", "41 °C").enter("tight", "true").enter("shutsDown", "true");
    }

    FinishedHouse enter(String key, String value) {
        values.put(key, value);
        return this;
    }

    static Finding found(
            OptionAssessment in,
            CheckTopic topic,
            Outcome outcome,
            double value,
            @Nullable Double limit,
            double margin,
            String unit) {
        Finding finding = AssessmentFactory.eINSTANCE.createFinding();
        finding.setKey("check." + topic.getName());
        finding.setTopic(topic);
        finding.setOutcome(outcome);
        finding.setValue(value);
        finding.setLimit(limit);
        finding.setMargin(margin);
        finding.setUnit(unit);
        finding.setKind(FindingClass.SAFETY);
        finding.setTitle("Title of " + topic.getName());
        finding.setText("Text of " + topic.getName());
        in.getFindings().add(finding);
        return finding;
    }

    Completion completion() {
        Job job = JobFactory.eINSTANCE.createJob();
        new CompletionLog(job, "invented.twinfeed").enter("Invented engineer", LocalDate.of(2026, 11, 25), values);
        return job.getCompletion();
    }

    List<CompletionReading> readings(Locale locale) {
        return CompletionAssessment.of(completion(), house, heater, judged, limits, locale);
    }

    CompletionReading reading(String key) {
        return readings(Locale.ENGLISH).stream()
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    CompletionSheet sheet() {
        return new CompletionSheet(completion(), house, heater, true, List.of(), List.of(), readings(Locale.ENGLISH));
    }

    /** All readings, one a line. */
    String text(Locale locale) {
        StringBuilder text = new StringBuilder();
        for (CompletionReading each : readings(locale)) {
            text.append(String.join(
                            " | ",
                            each.key(),
                            each.title(),
                            each.value(),
                            each.expected(),
                            each.sound() == null ? "not judged" : each.sound() ? "sound" : "NOT SOUND",
                            (each.safety() ? "safety" : "-") + (each.needed() ? " needed" : " -")))
                    .append('\n');
        }
        return text.toString();
    }
}
