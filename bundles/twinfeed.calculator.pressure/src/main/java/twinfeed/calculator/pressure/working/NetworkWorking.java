// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.FeedHydraulics;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.SurveyedTap;
import twinfeed.calculator.pressure.survey.TapFit;
import twinfeed.calculator.pressure.survey.TestOrigin;

/**
 * Writes down the flows of a feed with open taps, or through a unit that is an outlet, as on paper: the flows that the program
 * found are the first trial; each round takes the friction factors at the last flows, marches from the gauge to the unit with
 * them, and corrects the flow from the gauge by Newton's step. What is left over stands beside each round.
 *
 * <p>Pressures in bar, flows in L/min; {@code S} is a loss over the square of the flow.
 */
final class NetworkWorking {
    private static final int TRIAL_DIGITS = 10;

    /** From a trial that is a tenth off so many rounds lead to eleven digits: each squares the error. */
    private static final int ROUNDS = 5;

    private static final String DARCY = "Darcy-Weisbach";

    private final WorkingLines lines;
    private final Feed feed;
    private final List<Reach> reaches = new ArrayList<>();
    private final List<Pipe> toUnit = new ArrayList<>();
    private final @Nullable String unit;
    private final String given;
    private final String mark;
    private int round;

    /** A pipe with the ending of its symbols. */
    private record Pipe(NamedPipe piece, String ending) {}

    /** Pipes up to a tee, and the tap that leaves there. */
    private record Reach(List<Pipe> before, SurveyedTap tap, List<Pipe> branch, String ending) {}

    private NetworkWorking(
            WorkingLines lines, Feed feed, List<SurveyedTap> open, @Nullable String unit, String given, String mark) {
        this.mark = "_" + mark;
        this.lines = lines;
        this.feed = feed;
        this.unit = unit;
        this.given = given;
        addPipes(open);
    }

    /**
     * Starts with water, test, pipes and taps; lines that are there already stay as they are.
     *
     * @param unit symbol of the unit's resistance, which is among the lines, or null where its flow {@code Q} is
     * @param mark begins every ending, so that symbols do not meet
     */
    static NetworkWorking of(
            WorkingLines lines, FeedConditions conditions, int intake, int open, @Nullable String unit, String mark) {
        Feed feed = conditions.feed();
        FeedWorking.addWater(lines, conditions.intakeC(intake), conditions.intakeOrigin(intake));
        FeedWorking.addTest(lines, feed);
        return new NetworkWorking(lines, feed, feed.taps().subList(0, open), unit, "Q", mark);
    }

    /** Adds the flow of a tap that is open alone, the unit shut; the water and the test are among the lines. Returns its symbol. */
    static String alone(WorkingLines lines, Feed feed, SurveyedTap tap) {
        NetworkWorking network = new NetworkWorking(lines, feed, List.of(tap), null, "0", "");
        return network.solve(new double[] {tap.flowM3PerS()}, 0).taps().get(0);
    }

    private void addPipes(List<SurveyedTap> open) {
        List<SurveyedTap> taps = new ArrayList<>(open);
        taps.sort(Comparator.comparingInt(SurveyedTap::tee));
        int at = 0;
        for (SurveyedTap tap : taps) {
            String ending = mark + "t" + (reaches.size() + 1);
            reaches.add(new Reach(
                    addPipes(feed.run().subList(at, tap.tee()), mark, at),
                    tap,
                    addPipes(tap.branch(), ending + "_", 0),
                    ending));
            addOutlet(tap, ending);
            at = tap.tee();
        }
        if (unit != null) {
            toUnit.addAll(addPipes(feed.run().subList(at, feed.run().size()), mark, at));
        }
    }

    /** The tap's outlet, R with the ending: as it was fitted, where that is known. */
    private void addOutlet(SurveyedTap tap, String ending) {
        TapFit fit = tap.fit();
        TestOrigin test = fit == null ? null : fit.feed().test();
        if (fit == null || test == null) {
            lines.input(
                    "R" + ending, "tapResistance", OutletWorking.bar(tap.tap().outlet()), "bar/(L/min)²", "");
        } else {
            lines.include(OutletWorking.ofTap(fit, test), ending);
        }
    }

    private List<Pipe> addPipes(List<NamedPipe> pieces, String prefix, int numbered) {
        List<Pipe> pipes = new ArrayList<>();
        for (NamedPipe piece : pieces) {
            Pipe pipe = new Pipe(piece, prefix + (numbered + pipes.size() + 1));
            FrictionLines.addPipe(lines, piece, pipe.ending());
            pipes.add(pipe);
        }
        return pipes;
    }

    /** What a round starts from: the flow from the gauge and, for each tap and the unit, its flow in the last round. */
    private record Flows(String total, List<String> taps, String unit) {}

    /**
     * Adds the rounds.
     *
     * @param hydraulics the feed at the intake, which knows the flows
     * @param unitFlowM3PerS flow through the unit
     */
    void solve(FeedHydraulics hydraulics, double unitFlowM3PerS) {
        List<SurveyedTap> taps = reaches.stream().map(Reach::tap).toList();
        solve(hydraulics.tapFlows(unitFlowM3PerS, taps), unitFlowM3PerS);
    }

    private Flows solve(double[] tapFlows, double unitFlowM3PerS) {
        Flows flows = trial(tapFlows, unitFlowM3PerS);
        for (round = 1; round <= ROUNDS; round++) {
            lines.round(round);
            flows = addRound(flows);
        }
        lines.round(0);
        return flows;
    }

    private Flows trial(double[] flows, double unitFlowM3PerS) {
        List<String> taps = new ArrayList<>();
        StringBuilder sum = new StringBuilder();
        for (int i = 0; i < flows.length; i++) {
            String symbol = "q" + reaches.get(i).ending() + "_0";
            lines.input(symbol, "tapTrial", rounded(flows[i]), "L/min", "", "start.tap");
            taps.add(symbol);
            sum.append(symbol).append(" + ");
        }
        String own = given;
        if (unit != null) {
            own = "Q_u" + mark + "0";
            lines.input(own, "unitTrial", rounded(unitFlowM3PerS), "L/min", "", "start.unit");
        }
        lines.step("Qt" + mark + "0", "totalTrial", sum + own, "L/min", "");
        return new Flows("Qt" + mark + "0", taps, own);
    }

    private static double rounded(double flowM3PerS) {
        return new BigDecimal(flowM3PerS * FeedUnits.L_PER_MIN)
                .round(new MathContext(TRIAL_DIGITS))
                .doubleValue();
    }

    private Flows addRound(Flows before) {
        String at = mark + round;
        March march = start(before.total(), at);
        List<String> taps = new ArrayList<>();
        for (int i = 0; i < reaches.size(); i++) {
            taps.add(addReach(march, reaches.get(i), before.taps().get(i), at));
            if (i + 1 < reaches.size() && !reaches.get(i + 1).before().isEmpty()) {
                String on = "Q" + reaches.get(i).ending() + at;
                lines.step(on, "flowOn", march.rest, "L/min", "");
                march.rest = on;
            }
        }
        String own = unit == null ? before.unit() : addUnit(march, before.unit(), at);
        lines.step(
                "Qt" + at,
                "totalFlow",
                before.total() + " - (" + march.rest + " - " + own + ") / " + march.gain,
                "L/min",
                "Newton's step");
        return new Flows("Qt" + at, taps, own);
    }

    /** Symbols on the way from the gauge to the unit: pressure, how it falls, the flow that is left, and how that changes. */
    private static final class March {
        private String pressure = "";
        private String slope = "";
        private String rest = "";
        private String gain = "1";
    }

    private March start(String total, String at) {
        FeedWorking.addSupply(lines, total, at);
        March march = new March();
        march.pressure = "p_s" + at;
        march.slope = "n" + at + " * (p_0 - p_s" + at + ") / " + total;
        march.rest = total;
        return march;
    }

    /** Pipes up to a tee and the tap there; returns the symbol of the tap's flow. */
    private String addReach(March march, Reach reach, String lastFlow, String at) {
        String here = reach.ending() + at;
        addTee(reach, here, march);
        String tap = addDraw(march, "q" + here, "tapFlow", reach.branch(), lastFlow, "R" + reach.ending(), "g" + here);
        march.rest = march.rest + " - " + tap;
        return tap;
    }

    private String addUnit(March march, String lastFlow, String at) {
        return addDraw(march, "Q_u" + at, "unitFlow", toUnit, lastFlow, String.valueOf(unit), "g" + at);
    }

    /** The pressure at a tee, and how it falls with the flow from the gauge; without pipes before it both stay as they are. */
    private void addTee(Reach reach, String here, March march) {
        Losses losses = addLosses(reach.before(), march.rest);
        String loss =
                losses.isNone() ? "" : " - " + losses.square() + " * " + march.rest + "^2" + heights(reach.before());
        String steeper = losses.isNone() ? "" : " + 2 * " + losses.slope() + " * " + march.rest + " * " + march.gain;
        lines.step("p" + here, "teePressure", march.pressure + loss, "bar", DARCY)
                .step("d" + here, "teeSlope", march.slope + steeper, "bar/(L/min)", "");
        march.pressure = "p" + here;
        march.slope = "d" + here;
    }

    /**
     * The flow into a branch that ends in an outlet, none where the pressure does not reach it: by a power law through the last flow with the
     * slope that the losses have there. And how much more is drawn for one more litre a minute from the gauge.
     */
    private String addDraw(
            March march,
            String symbol,
            String meaning,
            List<Pipe> branch,
            String lastFlow,
            String outlet,
            String gain) {
        Losses losses = addLosses(branch, lastFlow);
        String driving = "max(0, " + march.pressure + heights(branch) + ")";
        if (losses.isNone()) {
            lines.step(symbol, meaning, "sqrt(" + driving + " / " + outlet + ")", "L/min", "");
        } else {
            String last = "max(0.000001, " + lastFlow + ")";
            String all = "(" + losses.square() + " + " + outlet + ")";
            String law = last + " * (" + driving + " / (" + all + " * " + last + "^2))^(" + all + " / (2 * ("
                    + losses.slope() + " + " + outlet + ")))";
            lines.step(symbol, meaning, law, "L/min", "");
        }
        String rise = losses.isNone() ? outlet : "(" + losses.slope() + " + " + outlet + ")";
        lines.step(
                gain,
                "gain",
                march.gain + " + if(" + symbol + " > 0, " + march.slope + " / (2 * " + rise + " * " + symbol + "), 0)",
                "",
                "");
        march.gain = gain;
        return symbol;
    }

    /** Sums over pipes of the loss over the square of the flow and of half its rise over the flow; empty where there is no pipe. */
    private record Losses(String square, String slope) {
        boolean isNone() {
            return square.isEmpty();
        }
    }

    private static String heights(List<Pipe> pipes) {
        StringBuilder sum = new StringBuilder();
        pipes.forEach(pipe -> sum.append(" - h").append(pipe.ending()));
        return sum.toString();
    }

    private Losses addLosses(List<Pipe> pipes, String flow) {
        List<String> squares = new ArrayList<>();
        List<String> slopes = new ArrayList<>();
        for (Pipe pipe : pipes) {
            String at = FrictionLines.addSquare(lines, pipe.piece().pipe(), pipe.ending(), flow, round);
            squares.add("S" + at);
            slopes.add("M" + at);
        }
        return new Losses(sum(squares), sum(slopes));
    }

    private static String sum(List<String> terms) {
        return terms.size() < 2 ? String.join("", terms) : "(" + String.join(" + ", terms) + ")";
    }

    /** Adds the pressure at the inlet for the flow {@code Q} from the pressure at the last tee, as {@code p_in}. */
    void addInlet() {
        Reach outermost = reaches.get(reaches.size() - 1);
        int tee = outermost.tap().tee();
        FeedWorking.addRun(
                lines,
                feed.run().subList(tee, feed.run().size()),
                "Q",
                "p" + outermost.ending() + mark + ROUNDS,
                tee + 1,
                "p_in");
    }

    /** The symbol of the unit's flow in the last round. */
    String unitFlow() {
        return "Q_u" + mark + ROUNDS;
    }
}
