// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Context;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.expression.Expression;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Element;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.Survey;
import twinfeed.units.Length;
import twinfeed.units.Power;
import twinfeed.units.Pressure;

/** Where those who know power and target flow say how they were found, the workings begin there and end in their figures all the same. */
class WorkingsFromThePowerTest {
    /** A heater on a circuit without losses, and water of 4187 J/(kg K). */
    private static final class Explained implements Calculator {
        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Explained.class)
                    .provides(SharedQuantity.DELIVERED_POWER, SharedQuantity.TARGET_FLOW)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            Grid grid = context.grid();
            return (candidate, shared, findings) -> {
                double[] powers = new double[grid.voltageCount()];
                Arrays.setAll(powers, at -> power(candidate.heater(), grid, at).value("P"));
                shared.put(SharedQuantity.DELIVERED_POWER, powers);
                shared.explain(SharedQuantity.DELIVERED_POWER, at -> power(candidate.heater(), grid, at)
                        .build());
                double[] flows = new double[SharedQuantity.TARGET_FLOW.size(grid)];
                Arrays.setAll(flows, at -> flow(candidate.heater(), grid, at).value("m"));
                shared.put(SharedQuantity.TARGET_FLOW, flows);
                shared.explain(SharedQuantity.TARGET_FLOW, at -> flow(candidate.heater(), grid, at)
                        .build());
            };
        }

        private static Working.Builder power(Heater heater, Grid grid, int voltage) {
            return Working.start()
                    .input("P_r", "ratedPower", heater.getPower().si(), "W", "")
                    .input("U_r", "ratedVoltage", heater.getVoltage().si(), "V", "")
                    .input("U_0", "originVoltage", grid.voltage(voltage), "V", "")
                    .step("P", "power", "P_r * (U_0 / U_r)^2", "W", "");
        }

        private static Working.Builder flow(Heater heater, Grid grid, int at) {
            return power(heater, grid, at % grid.voltageCount())
                    .input(
                            "T_i",
                            "intake",
                            grid.intakes().get(at / grid.voltageCount()).temperatureC(),
                            "°C",
                            "")
                    .step("m", "massFlow", "P / (4187 * (40 - T_i))", "kg/s", "");
        }
    }

    private static List<Finding> findings(Survey survey, Heater heater) {
        return runner().assess(survey, List.of(new Candidate(heater, false)))
                .options()
                .get(0)
                .findings();
    }

    private static Finding finding(Survey survey, Heater heater, String check) {
        return findings(survey, heater).stream()
                .filter(each -> each.check().key().equals(check))
                .findFirst()
                .orElseThrow();
    }

    private static Heater heater(String power) {
        Heater heater = Samples.heater();
        heater.setPower(Power.valueOf(power));
        for (String each : List.of("5.0 kW", "4.5 kW")) {
            Element element = CatalogueFactory.eINSTANCE.createElement();
            element.setPower(Power.valueOf(each));
            heater.getElements().add(element);
        }
        return heater;
    }

    private static List<String> symbols(Finding finding) {
        return finding.working().steps().stream().map(Step::symbol).toList();
    }

    private static double value(Finding finding, String symbol) {
        return finding.working().steps().stream()
                .filter(step -> step.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new AssertionError(symbol + " is not among " + symbols(finding)))
                .value();
    }

    private static void endsInItsFigure(Finding finding) {
        Map<String, Double> values = new LinkedHashMap<>();
        List<Step> steps = finding.working().steps();
        for (Step step : steps) {
            if (step.expression() != null) {
                double again = Expression.parse(step.expression()).evaluate(values);
                assertEquals(step.value(), again, 1e-9 * Math.max(1e-6, Math.abs(again)), step.symbol());
            }
            values.put(step.symbol(), step.value());
        }
        if (!steps.isEmpty()) {
            double figure = Fixtures.value(finding);
            assertEquals(
                    figure,
                    steps.get(steps.size() - 1).value(),
                    1e-8 * Math.max(1e-3, Math.abs(figure)),
                    finding.check().key());
        }
    }

    /** At 9.5 kW the power sets the flow, at 14.5 and 16 kW pipe and power are near one another, at 25 kW the pipe sets it. */
    @ParameterizedTest
    @ValueSource(strings = {"9.5 kW", "14.5 kW", "16 kW", "25 kW"})
    void everyWorkingEndsInItsFigure(String power) {
        List<Heater> heaters = new ArrayList<>(List.of(heater(power), heater(power), heater(power)));
        heaters.get(1).setSwitchPlace(SwitchPlace.HEATING_CHAMBER);
        heaters.get(1).setMakePressure(Pressure.valueOf("0.05 bar"));
        heaters.get(1).setBreakPressure(Pressure.valueOf("0.03 bar"));
        heaters.get(2).setStabilised(true);
        heaters.get(2).setStabilisedMinimum(Pressure.valueOf("0.35 bar"));
        heaters.get(2).setMakePressure(null);
        for (Heater heater : heaters) {
            for (boolean taps : new boolean[] {true, false}) {
                Survey survey = Samples.survey();
                survey.getWater().setLowestHandset(Length.valueOf("0 m"));
                if (!taps) {
                    survey.getWater().getDrawOffs().clear();
                }
                for (Finding finding : findings(survey, heater)) {
                    assertTrue(
                            finding.outcome() != Outcome.CANNOT_TELL, () -> finding.check() + " " + finding.missing());
                    endsInItsFigure(finding);
                }
            }
        }
    }

    /** 5 degC, 216.2 V: 9.5 kW x (216.2 / 240)² = 7.7093 kW; over 4187 J/(kg K) x 35 K 3.1564 kg/min. */
    @Test
    void theFlowBeginsWithThePower() {
        Survey survey = Samples.survey();
        survey.getWater().getDrawOffs().clear();
        Finding activation = finding(survey, heater("9.5 kW"), "pressure.activation");
        assertEquals(7709.3, value(activation, "P_w"), 0.1);
        assertEquals(3.1564 / 60, value(activation, "m_w"), 1e-5);
        assertEquals(3.1564, value(activation, "Q"), 0.001);
        assertFalse(symbols(activation).contains("Q_a"));
    }

    /** On the low setting 4.5 of 9.5 kW heat; the share stands in flow and power. */
    @Test
    void theLowSettingTakesItsShare() {
        Finding low = finding(Samples.survey(), heater("9.5 kW"), "pressure.summerLow");
        Finding full = finding(Samples.survey(), heater("9.5 kW"), "pressure.summer");
        assertEquals(4.5 / 9.5, value(low, "s"), 1e-12);
        assertEquals(value(full, "P") * 4.5 / 9.5, value(low, "P"), 1e-6);
        assertEquals(value(full, "Q") * 4.5 / 9.5, value(low, "Q"), 1e-6);
        assertFalse(symbols(full).contains("s"));
        assertEquals(Fixtures.value(full), Fixtures.value(low), 1e-6, "less power heats less water as far");
    }

    /** The smaller of what the power heats and what the pipe gives, both written down where a reading may turn the one into the other. */
    @ParameterizedTest
    @CsvSource({"9.5 kW, false", "14.5 kW, true", "16 kW, true", "25 kW, false"})
    void bothFlowsAreWrittenDownWhereTheyAreNear(String power, boolean both) {
        Survey survey = Samples.survey();
        survey.getWater().getDrawOffs().clear();
        Finding summer = finding(survey, heater(power), "pressure.summer");
        assertEquals(
                both,
                symbols(summer).contains("Q_w") && symbols(summer).contains("Q_a"),
                symbols(summer).toString());
        double flow = ((Number) summer.arguments().get("flow")).doubleValue();
        assertEquals(flow, value(summer, "Q"), 1e-8);
        if (both) {
            assertEquals(Math.min(value(summer, "Q_w"), value(summer, "Q_a")), value(summer, "Q"), 1e-12);
        }
    }

    private static Runner runner() {
        return new Runner(List.of(new PressureCalculator(), new Explained()), (mean, spread, day, southern) -> mean);
    }

    /** In a house that work has changed the taps are those that were read before it, and what they give follows from their outlets. */
    @Test
    void inAHouseThatWorkHasChangedTheWorkingsEndInTheirFiguresToo() {
        Survey survey = Samples.survey();
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("1.6 bar"));
        survey.getWater().getTest().setRunningPressure(Pressure.valueOf("0.9 bar"));
        survey.getWater().getSegments().get(0).setMaterial(PipeMaterial.LEAD);
        survey.getWater().getSegments().get(0).setBore(Length.valueOf("12 mm"));
        survey.getWater().getDrawOffs().forEach(tap -> tap.setTeeAfter("rising main"));
        Heater heater = heater("9.5 kW");
        List<Remedy> works = finding(survey, heater, "pressure.dropOut").remedies();
        assertEquals(
                List.of("full-bore-valve", "branch-22", "service-pipe", "break-tank-pump", "own-branch"),
                works.stream().map(Remedy::id).toList());
        for (Remedy work : works) {
            Survey changed = EcoreUtil.copy(survey);
            work.edit().accept(changed);
            List<Finding> findings = runner().judge(survey, changed, new Candidate(heater, false))
                    .findings();
            findings.forEach(WorkingsFromThePowerTest::endsInItsFigure);
            double tapBefore = value(finding(survey, heater, "pressure.velocity"), "Q_t");
            if (work.id().equals("service-pipe")) {
                Finding velocity = findings.stream()
                        .filter(each -> each.check().key().equals("pressure.velocity"))
                        .findFirst()
                        .orElseThrow();
                assertEquals(12, tapBefore, 1e-9);
                assertEquals(
                        "survey.water.drawOffs[kitchen tap].flow",
                        Houses.step(finding(survey, heater, "pressure.velocity"), "Q_t")
                                .origin(),
                        "before the work it is what was read");
                assertNotNull(Houses.step(velocity, "Q_t").expression(), "after it, what its outlet gives");
                assertTrue(
                        value(velocity, "Q_t") > 12.2,
                        "with more pressure the kitchen tap gives more than the 12 L/min read");
            }
        }
    }
}
