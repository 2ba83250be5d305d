// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.pressure.hydraulics.FeedHydraulics;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.FeedUnits;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.SurveyedTap;
import twinfeed.engineering.pipe.Outlet;

/**
 * Writes down the flows of a feed with open taps, or through a unit that is an outlet, as on paper: the flows that the program
 * found are the first trial; each round takes the friction factors at the last flows, marches from the gauge to the unit with
 * them, and mends the flow from the gauge by Newton's step. What is left over stands beside each round.
 *
 * <p>Pressures in bar, flows in L/min; {@code S} is a loss over the square of the flow.
 */
final class NetworkWorking {
    private static final int TRIAL_DIGITS = 10;
    private static final int MOST_ROUNDS = 25;
    private static final double LAST_CHANGE = 2e-13;
    private static final double FIRST_ROOT = 6;
    private static final String DARCY = "Darcy-Weisbach";
    private static final String COLEBROOK = "Colebrook-White; 64/Re below Re = 2000, the larger of both up to 4000";

    private final WorkingLines lines;
    private final Feed feed;
    private final List<Reach> reaches = new ArrayList<>();
    private final List<Pipe> toUnit = new ArrayList<>();
    private final @Nullable Outlet unit;
    private final String resistance;
    private final String mark;
    private int round;

    /** A pipe with the ending of its symbols. */
    private record Pipe(NamedPipe piece, String ending) {}

    /** Pipes up to a tee, and the tap that leaves there. */
    private record Reach(List<Pipe> before, SurveyedTap tap, List<Pipe> branch, String ending) {}

    /**
     * Starts with water, test, pipes and taps.
     *
     * @param unit the unit as an outlet, or null where its flow {@code Q} is among the lines already
     */
    NetworkWorking(WorkingLines lines, Feed feed, int open, double intakeC, @Nullable Outlet unit) {
        this(lines, feed, open, intakeC, unit, "R_u", "");
    }

    /**
     * The same among other lines.
     *
     * @param resistance symbol of the unit's resistance
     * @param mark begins every ending, so that symbols do not meet
     */
    NetworkWorking(
            WorkingLines lines,
            Feed feed,
            int open,
            double intakeC,
            @Nullable Outlet unit,
            String resistance,
            String mark) {
        this.resistance = resistance;
        this.mark = "_" + mark;
        this.lines = lines;
        this.feed = feed;
        this.unit = unit;
        // Lines that are there already stay as they are.
        FeedWorking.addWater(lines, intakeC);
        FeedWorking.addTest(lines, feed.curve());
        addPipes(open);
    }

    private void addPipes(int open) {
        List<SurveyedTap> taps = new ArrayList<>(feed.taps().subList(0, open));
        taps.sort(Comparator.comparingInt(SurveyedTap::tee));
        int at = 0;
        for (SurveyedTap tap : taps) {
            String ending = mark + "t" + (reaches.size() + 1);
            reaches.add(new Reach(
                    addPipes(feed.run().subList(at, tap.tee()), mark, at),
                    tap,
                    addPipes(tap.branch(), ending + "_", 0),
                    ending));
            lines.input("R" + ending, "tapResistance", bar(tap.tap().outlet()), "bar/(L/min)²", "");
            at = tap.tee();
        }
        if (unit != null) {
            toUnit.addAll(addPipes(feed.run().subList(at, feed.run().size()), mark, at));
            lines.input(resistance, "unitResistance", bar(unit), "bar/(L/min)²", "");
        }
    }

    private static double bar(Outlet outlet) {
        return outlet.resistancePaPerFlow2() / FeedUnits.BAR / FeedUnits.L_PER_MIN / FeedUnits.L_PER_MIN;
    }

    private List<Pipe> addPipes(List<NamedPipe> pieces, String prefix, int numbered) {
        List<Pipe> pipes = new ArrayList<>();
        for (NamedPipe piece : pieces) {
            Pipe pipe = new Pipe(piece, prefix + (numbered + pipes.size() + 1));
            FrictionLines.addPipe(lines, pipe.piece().pipe(), pipe.ending());
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
        Flows flows = trial(hydraulics, unitFlowM3PerS);
        double total = lines.value(flows.total());
        for (round = 1; round <= MOST_ROUNDS; round++) {
            flows = addRound(flows);
            double next = lines.value(flows.total());
            boolean settled = Math.abs(next - total) <= LAST_CHANGE * next && round > 1;
            total = next;
            if (settled) {
                break;
            }
        }
    }

    private Flows trial(FeedHydraulics hydraulics, double unitFlowM3PerS) {
        List<String> taps = new ArrayList<>();
        StringBuilder sum = new StringBuilder();
        double[] flows = hydraulics.tapFlows(
                unitFlowM3PerS, reaches.stream().map(Reach::tap).toList());
        for (int i = 0; i < flows.length; i++) {
            String symbol = "q" + reaches.get(i).ending() + "_0";
            lines.input(symbol, "tapTrial", rounded(flows[i]), "L/min", "");
            taps.add(symbol);
            sum.append(symbol).append(" + ");
        }
        String own = "Q";
        if (unit != null) {
            own = "Q_u" + mark + "0";
            lines.input(own, "unitTrial", rounded(unitFlowM3PerS), "L/min", "");
        }
        lines.step("Qt" + mark + "0", "totalTrial", sum + own, "L/min", "");
        return new Flows("Qt" + mark + "0", taps, own);
    }

    private static double rounded(double flowM3PerS) {
        return new BigDecimal(flowM3PerS * FeedUnits.L_PER_MIN)
                .round(new MathContext(TRIAL_DIGITS))
                .doubleValue();
    }

    private Flows addRound(Flows last) {
        String at = mark + round;
        March march = start(last.total(), at);
        List<String> taps = new ArrayList<>();
        for (int i = 0; i < reaches.size(); i++) {
            taps.add(addReach(march, reaches.get(i), last.taps().get(i), at));
        }
        String own = unit == null ? last.unit() : addUnit(march, last.unit(), at);
        lines.step("E" + at, "leftOver", march.rest + " - " + own, "L/min", "")
                .step(
                        "Qt" + at,
                        "totalFlow",
                        last.total() + " - E" + at + " / " + march.gain,
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
        lines.step(
                "d" + at,
                "supplySlope",
                "n" + at + " * (p_0 - p_1) / Q_1 * (" + total + " / Q_1)^(n" + at + " - 1)",
                "bar/(L/min)",
                "");
        March march = new March();
        march.pressure = "p_s" + at;
        march.slope = "d" + at;
        march.rest = total;
        return march;
    }

    /** Pipes up to a tee and the tap there; returns the symbol of the tap's flow. */
    private String addReach(March march, Reach reach, String lastFlow, String at) {
        String here = reach.ending() + at;
        addTee(reach, here, march.pressure, march.slope, march.rest, march.gain);
        march.pressure = "p" + here;
        march.slope = "d" + here;
        String tap = addDraw("q" + here, "tapFlow", march.pressure, reach.branch(), lastFlow, "R" + reach.ending());
        march.gain = addGain("g" + here, march.gain, march.slope, tap);
        lines.step("Q" + here, "flowOn", march.rest + " - " + tap, "L/min", "");
        march.rest = "Q" + here;
        return tap;
    }

    private String addUnit(March march, String lastFlow, String at) {
        String own = addDraw("Q_u" + at, "unitFlow", march.pressure, toUnit, lastFlow, resistance);
        march.gain = addGain("g" + at, march.gain, march.slope, own);
        return own;
    }

    /** The pressure at a tee, and how it falls with the flow from the gauge; without pipes before it both stay as they are. */
    private void addTee(Reach reach, String here, String pressure, String slope, String rest, String gain) {
        String square = addSquares(reach.before(), rest, "c" + here);
        String loss = square.isEmpty() ? "" : " - " + square + " * " + rest + "^2" + heights(reach.before());
        String steeper = square.isEmpty() ? "" : " + 2 * " + square + " * " + rest + " * " + gain;
        lines.step("p" + here, "teePressure", pressure + loss, "bar", DARCY)
                .step("d" + here, "teeSlope", slope + steeper, "bar/(L/min)", "");
    }

    /** The flow into a branch that ends in an outlet; none where the pressure does not reach it. */
    private String addDraw(
            String symbol, String meaning, String pressure, List<Pipe> branch, String lastFlow, String outlet) {
        String square = addSquares(branch, lastFlow, "u" + symbol);
        lines.step("e" + symbol, "drivingPressure", "max(0, " + pressure + heights(branch) + ")", "bar", "");
        lines.step(
                symbol,
                meaning,
                "sqrt(e" + symbol + " / (" + (square.isEmpty() ? "" : square + " + ") + outlet + "))",
                "L/min",
                "");
        return symbol;
    }

    /** How much more is drawn for one more litre a minute from the gauge. */
    private String addGain(String symbol, String gain, String slope, String flow) {
        lines.step(
                symbol,
                "gain",
                gain + " + if(e" + flow + " > 0, " + slope + " * " + flow + " / (2 * e" + flow + "), 0)",
                "",
                "");
        return symbol;
    }

    private static String heights(List<Pipe> pipes) {
        StringBuilder sum = new StringBuilder();
        pipes.forEach(pipe -> sum.append(" - h").append(pipe.ending()));
        return sum.toString();
    }

    /** Adds the loss over the square of the flow of some pipes at a flow; nothing where there is no pipe. */
    private String addSquares(List<Pipe> pipes, String flow, String sumSymbol) {
        if (pipes.isEmpty()) {
            return "";
        }
        List<String> squares = new ArrayList<>();
        for (Pipe pipe : pipes) {
            squares.add(FrictionLines.addSquare(lines, pipe.piece().pipe(), pipe.ending(), flow, round));
        }
        if (squares.size() == 1) {
            return squares.get(0);
        }
        lines.step("S" + sumSymbol, "squareSum", String.join(" + ", squares), "bar/(L/min)²", "");
        return "S" + sumSymbol;
    }

    /** Adds the pressure at the inlet for the flow {@code Q} from the pressure at the last tee, as {@code p_in}. */
    void addInlet() {
        Reach last = reaches.get(reaches.size() - 1);
        int tee = last.tap().tee();
        FeedWorking.addRun(
                lines,
                feed.run().subList(tee, feed.run().size()),
                "Q",
                "p" + last.ending() + mark + Math.min(round, MOST_ROUNDS),
                tee + 1,
                "p_in");
    }

    /** The symbol of the unit's flow in the last round. */
    String unitFlow() {
        return "Q_u" + mark + Math.min(round, MOST_ROUNDS);
    }
}
