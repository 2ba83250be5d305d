// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.StandInCalculator;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.formula.Step;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Flow;
import twinfeed.units.Pressure;

/** Assesses variants of the sample house. */
final class Houses {
    private Houses() {}

    static Runner runner() {
        return new Runner(
                List.of(
                        new PressureCalculator(),
                        new StandInCalculator(List.of(SharedQuantity.TARGET_FLOW, SharedQuantity.DELIVERED_POWER))),
                (mean, spread, day, southern) -> mean);
    }

    static List<Finding> findings(Survey survey, Heater heater, boolean present) {
        return runner().assess(survey, List.of(new Candidate(heater, present)))
                .options()
                .get(0)
                .findings();
    }

    /** A finding with works done in the second survey, a copy of the first. */
    static Finding finding(Survey surveyed, Survey changed, Heater heater, String check) {
        return runner().judge(surveyed, changed, new Candidate(heater, false)).findings().stream()
                .filter(finding -> finding.check().key().equals(check))
                .findFirst()
                .orElseThrow();
    }

    static Finding finding(Survey survey, Heater heater, String check) {
        return findings(survey, heater, false).stream()
                .filter(finding -> finding.check().key().equals(check))
                .findFirst()
                .orElseThrow();
    }

    static Finding finding(String check, Consumer<Survey> survey, Consumer<Heater> heater) {
        Survey house = Samples.survey();
        Heater unit = Samples.heater();
        survey.accept(house);
        heater.accept(unit);
        return finding(house, unit, check);
    }

    /** A finding in English. */
    static String words(Finding finding) {
        return new FindingText(runner(), Locale.UK).sentence(finding);
    }

    /** What is assumed about a house and a heater, in English. */
    static List<String> assumptions(Survey survey, Heater heater) {
        FindingText words = new FindingText(runner(), Locale.ENGLISH);
        return runner().assess(survey, List.of(new Candidate(heater, false))).assumptions().stream()
                .map(words::assumption)
                .toList();
    }

    /** A line of the working of a finding. */
    static Step step(Finding finding, String symbol) {
        return finding.working().steps().stream()
                .filter(step -> step.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new AssertionError(symbol + " is not in the working"));
    }

    /** Types a parameter of the calculator into a survey. */
    static void parameter(Survey survey, String key, String value) {
        ParameterValue parameter = SurveyFactory.eINSTANCE.createParameterValue();
        parameter.setCalculator(PressureCalculator.ID);
        parameter.setKey(key);
        parameter.setValue(value);
        survey.getParameters().add(parameter);
    }

    /** The supply of a house: the readings of its two-point test. */
    static void supply(Survey survey, String staticPressure, String running, String flow) {
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf(staticPressure));
        survey.getWater().getTest().setRunningPressure(Pressure.valueOf(running));
        survey.getWater().getTest().setFlow(Flow.valueOf(flow));
    }

    /** The gauge at the heater itself: no pipe is left to count. */
    static void gaugeAtHeater(Survey survey) {
        survey.getWater().getTest().setGaugeAfter("shower branch");
        survey.getWater().getTest().setGaugeHeight(null);
    }
}
