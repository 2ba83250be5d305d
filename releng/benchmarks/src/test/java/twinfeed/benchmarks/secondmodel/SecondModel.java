// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks.secondmodel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.model.survey.Survey;

/** All figures of one heater in one house, by name; a name is a check's key, with what is meant of it where it is not the value. */
final class SecondModel {
    private static final double BAR = 1e5;
    private static final double L_PER_MIN = 60_000;

    /** UK mains by month, degC: SAP 10.2 table J1, "from mains". */
    private static final double[] MONTHS = {8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5};

    private final Survey survey;
    private final Heater heater;
    private final ElectricalSide electric;
    private final WaterSide water;
    private final double outletC;
    private final Map<String, Double> figures = new LinkedHashMap<>();
    private final List<LiquidWater> intakes = new ArrayList<>();
    private final List<Double> supplies;

    private SecondModel(Survey survey, Survey asFound, Heater heater, double outletC, Map<String, Double> fittings) {
        this.survey = survey;
        this.heater = heater;
        this.outletC = outletC;
        this.electric = new ElectricalSide(survey.getElectricity(), heater);
        this.water = new WaterSide(survey, asFound, fittings);
        intakes.add(LiquidWater.at(survey.getWinterIntake().si()));
        for (double month : MONTHS) {
            intakes.add(LiquidWater.at(month));
        }
        // The lowest and highest voltage of the supply rules, two usual ones, and the one that was measured.
        this.supplies = List.copyOf(new TreeSet<>(List.of(216.2, 230.0, 240.0, 253.0, electric.suppliedV())));
    }

    /** The figures of a house, perhaps with works done; what was fitted to readings stays as it was found. */
    static Map<String, Double> figures(
            Survey survey, Survey asFound, Heater heater, double outletC, Map<String, Double> fittings) {
        SecondModel model = new SecondModel(survey, asFound, heater, outletC, fittings);
        model.electricity();
        model.flows();
        model.pressures();
        return model.figures;
    }

    private void electricity() {
        double own = electric.suppliedV();
        figures.put("circuit.designCurrent", electric.designCurrent());
        figures.put(
                "circuit.highVoltageCurrent",
                electric.designCurrent() * 253 / heater.getVoltage().si());
        figures.put("circuit.capacity", electric.capacity());
        figures.put("circuit.voltageDrop", electric.voltageDrop());
        figures.put("circuit.voltageDrop:percent", electric.voltageDrop() / 230 * 100);
        figures.put("circuit.terminalVoltage", electric.terminalVoltage(own));
        figures.put("circuit.terminalVoltage:lowest", electric.terminalVoltage(216.2));
        figures.put("circuit.deliveredPower", electric.deliveredW(own) / 1000);
        figures.put("circuit.deliveredPower:lowest", electric.deliveredW(216.2) / 1000);
        figures.put("circuit.loopImpedance", electric.loop());
        figures.put("circuit.isolatorRating", electric.neededSwitch());
        if (survey.getElectricity().getCircuit().getDevice().getLetThrough() != null) {
            figures.put("circuit.protectiveConductor", electric.protectiveConductor());
        }
        figures.put("circuit.longestRun", electric.longestRun(electric.smallestSizeMm2()));
        double[] sizes = {1, 1.5, 2.5, 4, 6, 10, 16};
        for (int i = 0; i < sizes.length; i++) {
            figures.put("circuit.longestRun#longestRun[" + i + "]", electric.longestRun(sizes[i]));
        }
        figures.put("demand.serviceFuse", electric.demand());
        figures.put("demand.mainSwitch", electric.demand());
    }

    /** Mass flow that a power heats to the target, kg/s. */
    private double mass(double watts, LiquidWater intake) {
        return watts / (LiquidWater.at(outletC).enthalpy() - intake.enthalpy());
    }

    /** The same as volume at the outlet, L/min. */
    private double atOutlet(double watts, LiquidWater intake) {
        return mass(watts, intake) / LiquidWater.at(outletC).density() * L_PER_MIN;
    }

    /** The same as volume at the inlet, m3/s. */
    private double atInlet(double supplyV, LiquidWater intake) {
        return mass(electric.deliveredW(supplyV), intake) / intake.density();
    }

    private void flows() {
        LiquidWater winter = intakes.get(0);
        double watts = electric.deliveredW(electric.suppliedV());
        figures.put("flow.winter", atOutlet(watts, winter));
        figures.put("flow.winter:inletFlow", mass(watts, winter) / winter.density() * L_PER_MIN);
        figures.put("flow.atRating", atOutlet(heater.getPower().si(), winter));
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int month = 1; month <= 12; month++) {
            double flow = atOutlet(watts, intakes.get(month));
            figures.put("flow.byMonth#flow.byMonth[" + (month - 1) + "]", flow);
            least = Math.min(least, flow);
            most = Math.max(most, flow);
        }
        figures.put("flow.byMonth", least);
        figures.put("flow.byMonth:most", most);
        // Both elements are alike, so the low setting is half of the power, and so is what is left with one burnt out.
        figures.put("flow.lowPower", atOutlet(watts / 2, warmest()));
        figures.put("flow.oneElement", LiquidWater.temperatureOf(winter.enthalpy() + watts / 2 / mass(watts, winter)));
        figures.put("flow.intake", warmest().temperatureC());
    }

    private LiquidWater warmest() {
        return intakes.stream()
                .max(java.util.Comparator.comparingDouble(LiquidWater::temperatureC))
                .orElseThrow();
    }

    private void pressures() {
        LiquidWater winter = intakes.get(0);
        double named = heater.getRunningPressureFlow().si();
        figures.put("pressure.static", water.staticAtUnitPa(winter) / BAR);
        figures.put("pressure.running", water.inletPa(named, 0, winter) / BAR);
        figures.put("pressure.loss:supply", water.supplyLossPa(named) / BAR);
        figures.put("pressure.loss:fittings", water.fittingsPa(named, winter) / BAR);
        figures.put("pressure.available", water.availableFlow(need(), 0, winter) * L_PER_MIN);
        figures.put("pressure.scale", survey.getWater().getHardness().si() * 1000);
        figures.put(
                "pressure.standard",
                survey.getWater().getTest().getStaticPressure().si() / BAR);
        switchPressure();
        throttle();
        summer();
        velocity();
    }

    /** The least running pressure of the instructions stands for the unit fully open, as a square law, Pa/(m3/s)2. */
    private double need() {
        double flow = heater.getRunningPressureFlow().si();
        return heater.getMinimumRunningPressure().si() / (flow * flow);
    }

    /** Pressure at the switch: the condition with the smallest margin of all months, voltages and taps. */
    private void switchPressure() {
        double worst = Double.POSITIVE_INFINITY;
        double found = 0;
        for (LiquidWater intake : intakes) {
            for (int open = 0; open <= Math.min(2, water.tapCount()); open++) {
                double available = water.availableFlow(need(), open, intake);
                for (double supply : supplies) {
                    double flow = Math.min(available, atInlet(supply, intake));
                    for (double[] state : switchStates(flow, flow >= available, open, intake)) {
                        if (state[0] - state[1] < worst) {
                            worst = state[0] - state[1];
                            found = state[0];
                        }
                    }
                }
            }
        }
        figures.put("pressure.switch", found / BAR);
    }

    /** What the switch feels and what it needs, Pa: once ahead of the throttle; behind it once to make, with the hose empty, and once to stay made. */
    private List<double[]> switchStates(double flow, boolean limited, int open, LiquidWater intake) {
        double make = heater.getMakePressure().si();
        if (heater.getSwitchPlace() == SwitchPlace.INLET_CHAMBER) {
            double lossFlow = heater.getInletLossFlow().si();
            double loss = heater.getInletLoss().si() * Math.pow(flow / lossFlow, 2);
            double inlet = limited ? need() * flow * flow : water.inletPa(flow, open, intake);
            return List.of(new double[] {inlet - loss, make});
        }
        double down = heater.getDownstreamPressure().si()
                * Math.pow(flow / heater.getDownstreamFlow().si(), 2);
        double handset = intake.columnPa(survey.getWater().getLowestHandset().si());
        return List.of(
                new double[] {down, make},
                new double[] {down + handset, heater.getBreakPressure().si()});
    }

    /** Pressure at the inlet where the least is left beyond what the unit needs for the flow of the target temperature. */
    private void throttle() {
        double worst = Double.POSITIVE_INFINITY;
        double found = 0;
        for (LiquidWater intake : intakes) {
            for (int open = 0; open <= Math.min(2, water.tapCount()); open++) {
                for (double supply : supplies) {
                    double flow = atInlet(supply, intake);
                    double needed = heater.getThrottleMinimum().si()
                            + heater.getDownstreamPressure().si()
                                    * Math.pow(flow / heater.getDownstreamFlow().si(), 2);
                    double inlet = water.inletPa(flow, open, intake);
                    if (inlet - needed < worst) {
                        worst = inlet - needed;
                        found = inlet;
                    }
                }
            }
        }
        // Less than nothing is not a pressure: the program says in words that the feed cannot carry the flow.
        figures.put("pressure.throttle", Math.max(0, found) / BAR);
    }

    /** Outlet in the warmest month at the highest voltage with the flow that can be had, taps shut, degC. */
    private void summer() {
        LiquidWater intake = warmest();
        double watts = electric.deliveredW(253);
        double flow = Math.min(atInlet(253, intake), water.availableFlow(need(), 0, intake));
        double enthalpy = intake.enthalpy() + watts / (flow * intake.density());
        if (enthalpy < LiquidWater.at(100).enthalpy()) {
            figures.put("pressure.summer", LiquidWater.temperatureOf(enthalpy));
        }
    }

    /** Velocity in the pipe nearest to its limit, in the warmest month at the measured voltage with one tap open, m/s. */
    private void velocity() {
        LiquidWater intake = warmest();
        int open = Math.min(1, water.tapCount());
        double flow = Math.min(atInlet(electric.suppliedV(), intake), water.availableFlow(need(), open, intake));
        double tap = open == 0 ? 0 : water.firstTapAlone(intakes.get(0));
        figures.put("pressure.velocity", water.fastest(flow, tap));
    }
}
