// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks.secondmodel;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;

/** The water feed behind the gauge: supply curve, pipes to the unit, and taps as outlets that stay as they were found. */
final class WaterSide {
    /** More than any house draws, m3/s. */
    private static final double MOST_FLOW = 0.02;

    /** A tap whose stated flow the supply cannot give is taken as wide open at this pressure, Pa: the program's judgement. */
    private static final double WIDE_OPEN_PA = 1000;

    /** Wall roughness, m: drawn tube 0.0015 mm and plastic 0.007 mm, handbooks of fluid mechanics. */
    private static final Map<PipeMaterial, Double> ROUGHNESS = Map.of(
            PipeMaterial.COPPER,
            0.0015e-3,
            PipeMaterial.LEAD,
            0.0015e-3,
            PipeMaterial.PE,
            0.007e-3,
            PipeMaterial.PLASTIC,
            0.007e-3);

    private final double staticPa;
    private final double runningPa;
    private final double testFlow;
    private final List<String> names = new ArrayList<>();
    private final List<PipeLoss> pipes = new ArrayList<>();
    private final List<TapOutlet> taps = new ArrayList<>();
    private final Map<String, Double> availableFlows = new HashMap<>();

    /** A tap: where it leaves the run (after so many pipes), its own pipes, its outlet's height above the tee, and its flow by root of pressure. */
    private record TapOutlet(int tee, List<PipeLoss> branch, double heightM, double perRootPa) {
        /** What flows out with a pressure at the tee, m3/s. */
        double flow(double teePa, LiquidWater water) {
            double left = teePa - water.columnPa(heightM);
            if (left <= 0) {
                return 0;
            }
            double most = perRootPa * Math.sqrt(left);
            return branch.isEmpty()
                    ? most
                    : Bisection.root(q -> q * q / perRootPa / perRootPa + lostPa(q, water) - left, 0, most);
        }

        private double lostPa(double flow, LiquidWater water) {
            return branch.stream()
                    .mapToDouble(pipe -> pipe.frictionPa(flow, water) + pipe.fittingsPa(flow, water))
                    .sum();
        }
    }

    /**
     * The feed of a survey.
     *
     * @param survey the house, perhaps with works done
     * @param asFound the house in which the taps' flows were read
     * @param fittings loss coefficient of each kind of fitting
     */
    WaterSide(Survey survey, Survey asFound, Map<String, Double> fittings) {
        this(survey.getWater(), LiquidWater.at(asFound.getWinterIntake().si()), fittings);
        LiquidWater water = LiquidWater.at(asFound.getWinterIntake().si());
        WaterSide found = survey == asFound ? this : new WaterSide(asFound.getWater(), water, fittings);
        for (int i = 0; i < survey.getWater().getDrawOffs().size(); i++) {
            DrawOff tap = survey.getWater().getDrawOffs().get(i);
            taps.add(new TapOutlet(
                    tee(tap),
                    tap.getSegments().stream().map(pipe -> pipe(pipe, fittings)).toList(),
                    tap.getHeight().si(),
                    found.perRootPa(asFound.getWater().getDrawOffs().get(i), water)));
        }
    }

    private WaterSide(WaterFeed feed, LiquidWater water, Map<String, Double> fittings) {
        double gaugePa = feed.getTest().getGaugeHeight() == null
                ? 0
                : water.columnPa(feed.getTest().getGaugeHeight().si());
        staticPa = feed.getTest().getStaticPressure().si() + gaugePa;
        runningPa = feed.getTest().getRunningPressure().si() + gaugePa;
        testFlow = feed.getTest().getFlow().si();
        boolean behind = feed.getTest().getGaugeAfter() == null;
        for (PipeSegment pipe : feed.getSegments()) {
            if (behind) {
                names.add(pipe.getName());
                pipes.add(pipe(pipe, fittings));
            }
            behind |= pipe.getName().equals(feed.getTest().getGaugeAfter());
        }
    }

    private static PipeLoss pipe(PipeSegment pipe, Map<String, Double> fittings) {
        return new PipeLoss(
                pipe.getLength().si(),
                pipe.getBore().si(),
                ROUGHNESS.get(pipe.getMaterial()),
                k(pipe, fittings),
                pipe.getRise() == null ? 0 : pipe.getRise().si());
    }

    private static double k(PipeSegment pipe, Map<String, Double> fittings) {
        double sum = 0;
        for (Fitting fitting : pipe.getFittings()) {
            double one = fitting.getK() == null
                    ? fittings.get(fitting.getKind())
                    : fitting.getK().si();
            sum += fitting.getCount() * one;
        }
        return sum;
    }

    private int tee(DrawOff tap) {
        return names.indexOf(tap.getTeeAfter()) + 1;
    }

    /** The outlet of a tap from the flow that was read when it was open alone. */
    private double perRootPa(DrawOff tap, LiquidWater water) {
        double flow = tap.getFlow().si();
        double left = pressureAfter(tee(tap), flow, water)
                - water.columnPa(tap.getHeight().si());
        return flow / Math.sqrt(Math.max(WIDE_OPEN_PA, left));
    }

    /** Pressure of the supply at a flow, Pa; exponent 1.85 within the test, 2 beyond (form of NFPA 291, the less favourable on each side). */
    double curvePa(double flow) {
        double n = flow <= testFlow ? 1.85 : 2;
        return staticPa - (staticPa - runningPa) * Math.pow(Math.max(0, flow) / testFlow, n);
    }

    /** What the first tap gives when it is open alone, m3/s: its stated flow in the house as found, more or less than that once works are done. */
    double firstTapAlone(LiquidWater water) {
        TapOutlet tap = taps.get(0);
        return Bisection.root(q -> q - tap.flow(pressureAfter(tap.tee, q, water), water), 0, MOST_FLOW);
    }

    private double pressureAfter(int pipeCount, double flow, LiquidWater water) {
        return curvePa(flow)
                - pipes.subList(0, pipeCount).stream()
                        .mapToDouble(pipe -> pipe.lostPa(flow, water))
                        .sum();
    }

    double staticAtUnitPa(LiquidWater water) {
        return staticPa
                - water.columnPa(pipes.stream().mapToDouble(PipeLoss::riseM).sum());
    }

    int tapCount() {
        return taps.size();
    }

    /** Flow through the unit and pressure at its inlet for a flow into the feed. */
    private double[] downstream(double fromSupply, int open, LiquidWater water) {
        double flow = fromSupply;
        double pa = curvePa(fromSupply);
        for (int at = 0; at <= pipes.size(); at++) {
            for (TapOutlet tap : taps.subList(0, open)) {
                if (tap.tee == at) {
                    flow -= tap.flow(pa, water);
                }
            }
            if (at < pipes.size()) {
                pa -= pipes.get(at).lostPa(flow, water);
            }
        }
        return new double[] {flow, pa};
    }

    /** Pressure at the unit's inlet with a flow through it and so many taps open, Pa. */
    double inletPa(double unitFlow, int open, LiquidWater water) {
        return solved(unitFlow, open, water)[1];
    }

    private double[] solved(double unitFlow, int open, LiquidWater water) {
        double total = open == 0
                ? unitFlow
                : Bisection.root(all -> downstream(all, open, water)[0] - unitFlow, unitFlow, MOST_FLOW);
        return downstream(total, open, water);
    }

    /** Largest flow through the unit, which needs {@code needPaPerFlow2} times the square of the flow, m3/s. */
    double availableFlow(double needPaPerFlow2, int open, LiquidWater water) {
        return availableFlows.computeIfAbsent(
                open + " " + water.temperatureC(),
                key -> Bisection.root(q -> needPaPerFlow2 * q * q - inletPa(q, open, water), 0, 0.002));
    }

    /**
     * Velocity in the pipe that comes nearest to its limit (EN 806-3: 2 m/s in pipes that serve a tap too, 4 m/s in what feeds the unit alone). As
     * pipes are sized, the first tap draws there what it gives when it is open alone.
     */
    double fastest(double unitFlow, double tapFlow) {
        double worst = Double.POSITIVE_INFINITY;
        double velocity = 0;
        int shared = taps.isEmpty() ? 0 : taps.get(0).tee;
        for (int i = 0; i < pipes.size(); i++) {
            double limit = i < shared ? 2 : 4;
            double v = pipes.get(i).velocity(i < shared ? unitFlow + tapFlow : unitFlow);
            if ((limit - v) / limit < worst) {
                worst = (limit - v) / limit;
                velocity = v;
            }
        }
        return velocity;
    }

    double supplyLossPa(double flow) {
        return staticPa - curvePa(flow);
    }

    double fittingsPa(double flow, LiquidWater water) {
        return pipes.stream().mapToDouble(pipe -> pipe.fittingsPa(flow, water)).sum();
    }

    double frictionPa(double flow, LiquidWater water) {
        return pipes.stream().mapToDouble(pipe -> pipe.frictionPa(flow, water)).sum();
    }
}
