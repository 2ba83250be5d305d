// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import twinfeed.calculator.Assumptions;
import twinfeed.calculator.DrawOffState;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Intake;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;

/** Makes the grid of conditions of a survey; what the survey does not say is recorded as an assumption. */
final class Conditions {
    /** Winter design intake, degC: common practice. */
    private static final double WINTER_DESIGN_C = 5;

    /** No more taps than this are opened at once in the checks. */
    private static final int MOST_TAPS = 2;

    /** Id under which the conditions' own assumptions are recorded; their texts are the runner's. */
    private static final String CLIMATE = "climate";

    static final String OWNER = "conditions";

    private final Survey survey;
    private final RuleSet rules;
    private final Assumptions assumptions;
    private final IntakeModel intakeModel;

    Conditions(Survey survey, RuleSet rules, IntakeModel intakeModel, Assumptions assumptions) {
        this.survey = survey;
        this.intakeModel = intakeModel;
        this.rules = rules;
        this.assumptions = assumptions;
    }

    Grid grid() {
        double own = ownVoltage();
        TreeSet<Double> voltages = new TreeSet<>(rules.gridVoltages());
        voltages.add(own);
        double[] array = voltages.stream().mapToDouble(Double::doubleValue).toArray();
        return new Grid(intakes(), array, java.util.Arrays.binarySearch(array, own), drawOffs());
    }

    private double ownVoltage() {
        if (survey.getElectricity() != null && survey.getElectricity().getSupplyVoltage() != null) {
            return survey.getElectricity().getSupplyVoltage().si();
        }
        double nominal = rules.number("voltage.nominal");
        assume("supplyVoltage", Map.of("voltage", nominal));
        return nominal;
    }

    private List<Intake> intakes() {
        List<Intake> intakes = new ArrayList<>();
        intakes.add(new Intake(0, winter()));
        double[] months = new MonthlyIntake(survey, intakeModel).temperaturesC(climate());
        for (int month = 1; month <= months.length; month++) {
            intakes.add(new Intake(month, Math.max(months[month - 1], hottestFeedC())));
        }
        return intakes;
    }

    /** Hot water that feeds the unit is warmer than any month's cold water; in winter a store may be cold. */
    private double hottestFeedC() {
        WaterFeed water = survey.getWater();
        boolean hot = water != null && water.getSource() == WaterSource.HOT && water.getHottestFeed() != null;
        return hot ? water.getHottestFeed().si() : Double.NEGATIVE_INFINITY;
    }

    private double winter() {
        if (survey.getWinterIntake() != null) {
            return survey.getWinterIntake().si();
        }
        assume("winterIntake", Map.of("temperature", WINTER_DESIGN_C));
        return WINTER_DESIGN_C;
    }

    private String climate() {
        if (survey.getClimate() != null) {
            return survey.getClimate();
        }
        // Air temperatures are given for the model; a table in their place would not be this house's climate.
        if (survey.getAnnualMeanAir() != null && survey.getMonthlyAirSpread() != null) {
            return Climates.MODEL;
        }
        String climate = Climates.usual(survey.getWater());
        assume(CLIMATE, Map.of("climate", climate));
        return climate;
    }

    private List<DrawOffState> drawOffs() {
        List<DrawOffState> states = new ArrayList<>();
        states.add(new DrawOffState(0, List.of()));
        List<String> open = new ArrayList<>();
        if (survey.getWater() != null) {
            for (DrawOff tap : survey.getWater().getDrawOffs()) {
                if (open.size() < MOST_TAPS) {
                    open.add(tap.getName() == null ? String.valueOf(open.size() + 1) : tap.getName());
                    states.add(new DrawOffState(open.size(), open));
                }
            }
        }
        return states;
    }

    private void assume(String key, Map<String, Object> arguments) {
        assumptions.add(OWNER, key, arguments, key.equals(CLIMATE));
    }
}
