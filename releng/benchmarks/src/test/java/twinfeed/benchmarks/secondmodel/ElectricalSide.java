// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks.secondmodel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;

/**
 * The shower circuit and the demand of the house. Tables: BS 7671:2018 table 4D5 (flat twin and earth, 70 degC thermoplastic), 4C1 (grouping, bunched),
 * 433.1.202 (rewirable fuse), conductor resistances of BS EN 60228, On-Site Guide table A1; from memory, the capacities of 6 mm2 clipped direct, 10 and 16 mm2 method
 * 100 and the resistances read in print.
 */
final class ElectricalSide {
    private static final double NOMINAL_V = 230;

    private static final List<String> METHODS = List.of("100", "101", "102", "103", "C", "A");

    /** Size, mm2: capacities in A in the order of the methods. */
    private static final Map<Integer, double[]> CAPACITY = Map.of(
            6, new double[] {34, 27, 35, 23.5, 47, 32},
            10, new double[] {45, 36, 47, 32, 64, 44},
            16, new double[] {57, 46, 63, 42.5, 85, 57});

    /** Size, mm2: voltage drop, mV/A/m. */
    static final Map<Double, Double> DROP =
            Map.of(1.0, 44.0, 1.5, 29.0, 2.5, 18.0, 4.0, 11.0, 6.0, 7.3, 10.0, 4.4, 16.0, 2.8);

    /** Size, mm2: line and protective conductor together at 20 degC, mohm/m (3.08 + 7.41, 1.83 + 4.61, 1.15 + 3.08). */
    private static final Map<Integer, Double> LOOP = Map.of(6, 10.49, 10, 6.44, 16, 4.23);

    private final ElectricalFeed feed;
    private final Circuit circuit;
    private final double ratedW;
    private final double ratedV;

    ElectricalSide(ElectricalFeed feed, Heater heater) {
        this.feed = feed;
        this.circuit = feed.getCircuit();
        this.ratedW = heater.getPower().si();
        this.ratedV = heater.getVoltage().si();
    }

    double resistance() {
        return ratedV * ratedV / ratedW;
    }

    double designCurrent() {
        return ratedW / ratedV;
    }

    private static int size(CableSegment segment) {
        return (int) Math.round(segment.getSize().si() * 1e6);
    }

    private static double tabulated(CableSegment segment) {
        return CAPACITY.get(size(segment))[METHODS.indexOf(segment.getMethod())];
    }

    private static double grouping(CableSegment segment) {
        return segment.getGrouped() >= 2 ? 0.80 : 1;
    }

    private boolean rewirable() {
        return "fuse-3036".equals(circuit.getDevice().getKind());
    }

    /** Capacity of the worst piece, A: reference method, grouping and the factor of a rewirable fuse. */
    double capacity() {
        return circuit.getSegments().stream()
                .mapToDouble(one -> tabulated(one) * grouping(one) * (rewirable() ? 0.725 : 1))
                .min()
                .orElseThrow();
    }

    /** Drop of the design current at full conductor temperature, V. */
    double voltageDrop() {
        double drop = 0;
        for (CableSegment one : circuit.getSegments()) {
            drop += DROP.get((double) size(one)) / 1000 * one.getLength().si() * designCurrent();
        }
        return drop;
    }

    /** Voltage at the heater for a voltage at the origin under load: appendix 4, 6.1, each piece as warm as its current makes it. */
    double terminalVoltage(double originV) {
        double r = resistance();
        double current = Bisection.root(i -> i * (r + cableResistance(i)) - originV, 0, originV / r);
        return current * r;
    }

    private double cableResistance(double current) {
        double sum = 0;
        for (CableSegment one : circuit.getSegments()) {
            double group = grouping(one);
            double ratio = current / tabulated(one);
            double correction = rewirable() ? 1 : (230 + 70 - (group * group - ratio * ratio) * (70 - 30)) / (230 + 70);
            sum += DROP.get((double) size(one)) / 1000 * one.getLength().si() * correction;
        }
        return sum;
    }

    double deliveredW(double originV) {
        double v = terminalVoltage(originV);
        return v * v / resistance();
    }

    double suppliedV() {
        return feed.getSupplyVoltage().si();
    }

    /** Earth fault loop at full temperature, ohm: 1.20 for the rise from 20 to 70 degC. */
    double loop() {
        double cold = 0;
        for (CableSegment one : circuit.getSegments()) {
            cold += LOOP.get(size(one)) / 1000 * one.getLength().si();
        }
        return feed.getExternalLoop().si() + 1.20 * cold;
    }

    /** Longest run of a size by the drop alone: 5 % of 230 V (appendix 4, 6.4), m. */
    double longestRun(double sizeMm2) {
        return 0.05 * NOMINAL_V / (DROP.get(sizeMm2) / 1000 * designCurrent());
    }

    double smallestSizeMm2() {
        return circuit.getSegments().stream()
                .mapToInt(ElectricalSide::size)
                .min()
                .orElseThrow();
    }

    /** Protective conductor for a let-through energy: 543.1.3 with k = 115, mm2. */
    double protectiveConductor() {
        return Math.sqrt(circuit.getDevice().getLetThrough().si()) / 115;
    }

    double neededSwitch() {
        return Math.max(designCurrent(), circuit.getDevice().getRating().si());
    }

    /** Maximum demand after diversity, A. */
    double demand() {
        List<Double> showers = new ArrayList<>(List.of(designCurrent()));
        double rest = 0;
        for (Load load : feed.getLoads()) {
            double current = load.getPower() == null
                    ? load.getCurrent().si()
                    : load.getPower().si() / NOMINAL_V;
            if (load.getKind() == LoadKind.SHOWER) {
                showers.add(current);
            } else if (load.getKind() == LoadKind.COOKER) {
                rest += Math.min(10, current) + 0.3 * Math.max(0, current - 10);
            } else {
                rest += current;
            }
        }
        showers.sort(Comparator.reverseOrder());
        double sum = rest;
        for (int i = 0; i < showers.size(); i++) {
            sum += showers.get(i) * (i < 2 ? 1 : 0.25);
        }
        return sum;
    }
}
