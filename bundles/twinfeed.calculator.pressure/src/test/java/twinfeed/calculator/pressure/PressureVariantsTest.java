// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.expression.Expression;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.pressure.check.PressureChecks;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Pressure;

/** Every kind of unit in every kind of house: nothing breaks, workings end in their figures, sentences are complete. */
class PressureVariantsTest {
    private static final List<String> PLACES = List.of("inlet", "heating", "unknown", "flow");
    private static final List<String> KINDS = List.of("plain", "stabilised", "present");
    private static final List<String> TAPS = List.of("none", "one tee", "two tees", "ahead of the gauge");
    private static final List<String> SUPPLIES =
            List.of("3 bar 1.8 bar", "3 bar 2.85 bar", "1.2 bar 0.5 bar", "6 bar 5 bar");

    static List<Arguments> variants() {
        List<Arguments> all = new ArrayList<>();
        for (String place : PLACES) {
            for (String kind : KINDS) {
                for (String taps : TAPS) {
                    SUPPLIES.forEach(supply -> all.add(Arguments.of(place, kind, taps, supply)));
                }
            }
        }
        return all;
    }

    private static Heater heater(String place, String kind) {
        Heater heater = Samples.heater();
        switch (place) {
            case "heating" -> heater.setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
            case "unknown" -> heater.unsetSwitchPlace();
            case "flow" -> heater.setMakePressure(null);
            default -> heater.setActivationFlow(null);
        }
        if (kind.equals("stabilised")) {
            heater.setStabilised(true);
            heater.setStabilisedMinimum(Pressure.valueOf("0.2 bar"));
        }
        return heater;
    }

    private static Survey survey(String taps, String supply) {
        Survey survey = Samples.survey();
        switch (taps) {
            case "none" -> survey.getWater().getDrawOffs().clear();
            case "one tee" -> survey.getWater().getDrawOffs().forEach(tap -> tap.setTeeAfter("rising main"));
            case "ahead of the gauge" -> survey.getWater().getDrawOffs().get(0).setTeeAfter(null);
            default -> survey.getWater().getTest().setAtPeak(null);
        }
        WaterTest test = survey.getWater().getTest();
        test.setStaticPressure(Pressure.valueOf(supply.substring(0, supply.indexOf("bar") + 3)));
        test.setRunningPressure(Pressure.valueOf(supply.substring(supply.indexOf("bar") + 4)));
        return survey;
    }

    @ParameterizedTest(name = "{0}, {1}, {2}, {3}")
    @MethodSource("variants")
    void everyCheckHasAnAnswer(String place, String kind, String taps, String supply) {
        Heater heater = heater(place, kind);
        Survey survey = survey(taps, supply);
        List<Finding> findings = Houses.findings(survey, heater, kind.equals("present"));
        assertEquals(PressureChecks.ALL, findings.stream().map(Finding::check).toList());
        FindingText words = new FindingText(Houses.runner(), Locale.ENGLISH);
        for (Finding finding : findings) {
            assertTrue(
                    finding.outcome() != Outcome.CANNOT_TELL,
                    () -> finding.check().key() + finding.missing());
            assertFalse(words.sentence(finding).matches("(?s).*[\\[{][A-Za-z].*"), words.sentence(finding));
            finding.working().steps().forEach(step -> words(words, finding, step));
            workingEndsInTheFigure(finding);
            finding.remedies().forEach(remedy -> judgedAgain(survey, heater, remedy, words));
        }
    }

    private static void words(FindingText words, Finding finding, Step step) {
        assertFalse(words.meaning(finding.calculator(), step).startsWith("["), step.meaning());
    }

    private static void workingEndsInTheFigure(Finding finding) {
        Map<String, Double> values = new LinkedHashMap<>();
        for (Step step : finding.working().steps()) {
            String expression = step.expression();
            if (expression != null) {
                double again = Expression.parse(expression).evaluate(values);
                assertEquals(step.value(), again, 1e-9 * Math.max(1e-6, Math.abs(again)), step.symbol());
            }
            values.put(step.symbol(), step.value());
        }
        List<Step> steps = finding.working().steps();
        if (!steps.isEmpty()) {
            double value = Fixtures.value(finding);
            double last = steps.get(steps.size() - 1).value();
            assertEquals(
                    value,
                    last,
                    1e-9 * Math.max(1e-3, Math.abs(value)),
                    finding.check().key());
        }
    }

    private static void judgedAgain(Survey survey, Heater heater, Remedy remedy, FindingText words) {
        assertFalse(words.remedy(PressureCalculator.ID, remedy).matches("(?s).*[\\[{].*"));
        Survey edited = EcoreUtil.copy(survey);
        remedy.edit().accept(edited);
        assertFalse(EcoreUtil.equals(survey, edited), remedy.id() + " changes nothing");
        for (Finding finding : Houses.findings(edited, heater, false)) {
            assertFalse(finding.check().equals(Runner.BROKEN), () -> remedy.id() + finding.arguments());
            assertTrue(finding.outcome() != Outcome.CANNOT_TELL, () -> remedy.id() + finding.missing());
        }
    }
}
