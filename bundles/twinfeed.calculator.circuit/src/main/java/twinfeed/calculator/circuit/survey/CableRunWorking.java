// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.engineering.cable.ConductorTemperature;

/** The lines of workings that go through the cable run segment by segment. */
public final class CableRunWorking {
    /** Each round leaves some thousandths of the error, so that the last stands still. */
    private static final int ROUNDS = 6;

    private CableRunWorking() {}

    private static String cite(RunSegment segment, String source) {
        return segment.name() + "; " + source;
    }

    /** Adds the drop of each segment and their sum dU for the design current Ib, which stands above. */
    public static void drops(Working.Builder working, CircuitSurvey survey) {
        List<String> sum = new ArrayList<>();
        for (RunSegment segment : survey.run().segments()) {
            int n = sum.size() + 1;
            gradient(working, survey.rules(), segment, n);
            working.step("dU" + n, "segmentDrop", "g" + n + " * L" + n + " * Ib / 1000", "V", segment.name());
            sum.add("dU" + n);
        }
        working.step("dU", "drop", String.join(" + ", sum), "V", survey.cite("drop"));
    }

    private static String origin(RunSegment segment, String what) {
        return ReadingPaths.ofSegment(segment.name(), what);
    }

    /** Adds the length of a segment, L with its number. */
    public static void length(Working.Builder working, RunSegment segment, int n) {
        working.input(
                "L" + n,
                "length",
                Objects.requireNonNull(segment.lengthM()),
                "m",
                segment.name(),
                origin(segment, "length"));
    }

    private static void gradient(Working.Builder working, RuleSet rules, RunSegment segment, int n) {
        double mV = Objects.requireNonNull(segment.size()).dropVPerAm() * 1000;
        working.input(
                "g" + n,
                "dropGradient",
                mV,
                "mV/A/m",
                cite(segment, rules.tableSource("cables")),
                origin(segment, "dropGradient"));
        length(working, segment, n);
    }

    /**
     * Adds the current that flows and the loop resistance r of the run, each of which needs the other: rounds I0, r1, I1, r2 ...
     * until the current stands still, every round from the one above, so that whoever changes a length sees what follows.
     *
     * @param working has the element's resistance R and the voltage U0 at the origin above
     * @param currentA the current at which the rounds end, for their number
     */
    public static void resistance(Working.Builder working, CircuitSurvey survey, double currentA) {
        List<CableSegment> placed = Objects.requireNonNull(survey.run().placed());
        for (int at = 0; at < placed.size(); at++) {
            gradient(working, survey.rules(), survey.run().segments().get(at), at + 1);
            placing(working, survey, placed.get(at), at + 1, currentA);
        }
        working.step("I0", "currentWithoutCable", "U0 / R", "A", "");
        for (int round = 1; round <= ROUNDS; round++) {
            working.round(round);
            round(working, survey, placed, round);
        }
        working.round(0);
        working.step("dI", "currentResidual", "I" + ROUNDS + " - I" + (ROUNDS - 1), "A", "");
        working.step("r", "loopResistance", "r" + ROUNDS, "Ω", survey.cite("drop"));
    }

    private static void round(Working.Builder working, CircuitSurvey survey, List<CableSegment> placed, int round) {
        String current = "I" + (round - 1);
        List<String> sum = new ArrayList<>();
        for (int at = 0; at < placed.size(); at++) {
            int n = at + 1;
            sum.add("g" + n + " * L" + n + " / 1000 * " + temperatureFactor(placed.get(at), n, current));
        }
        working.step("r" + round, "loopResistanceRound", String.join(" + ", sum), "Ω", survey.cite("drop"));
        working.step("I" + round, "currentRound", "U0 / (R + r" + round + ")", "A", "");
    }

    /** Ct where it may be taken, in the form of appendix 4: tp is 70 degC, 230 a constant of copper in degC, no voltage. */
    private static String temperatureFactor(CableSegment segment, int n, String current) {
        return full(segment)
                ? "Ct" + n
                : "(230 + 70 - (Ca" + n + "^2 * Cg" + n + "^2 - " + current + "^2 / It" + n
                        + "^2) * (70 - 30)) / (230 + 70)";
    }

    private static boolean full(CableSegment segment) {
        return segment.ci() < 1 || segment.cf() < 1;
    }

    private static void placing(
            Working.Builder working, CircuitSurvey survey, CableSegment segment, int n, double currentA) {
        RunSegment piece = survey.run().segments().get(n - 1);
        String source = survey.cite("drop");
        if (full(segment)) {
            double factor = Cable.temperatureFactor(segment, currentA, ConductorTemperature.BY_CURRENT);
            working.input("Ct" + n, "temperatureFactorFull", factor, "", source, origin(piece, "temperatureFactor"));
            return;
        }
        String capacity = survey.rules().tableSource("capacity");
        working.input(
                "It" + n,
                "tabulatedCapacity",
                segment.tabulatedA(),
                "A",
                cite(piece, capacity),
                origin(piece, "tabulatedCapacity"));
        working.input(
                "Ca" + n,
                "ambientFactorCapped",
                Math.min(1, segment.ca()),
                "",
                cite(piece, source),
                origin(piece, "ambientFactorCapped"));
        working.input(
                "Cg" + n,
                "groupingFactor",
                segment.cg(),
                "",
                cite(piece, survey.rules().tableSource("grouping")),
                origin(piece, "groupingFactor"));
    }

    /** Adds R1 + R2 of each segment at 20 degC and their sum R12. */
    public static void loops(Working.Builder working, CircuitSurvey survey) {
        List<String> sum = new ArrayList<>();
        for (RunSegment segment : survey.run().segments()) {
            int n = sum.size() + 1;
            double milli = Objects.requireNonNull(segment.loopOhmPerM()) * 1000;
            String source = cite(segment, survey.rules().tableSource("conductors"));
            working.input("z" + n, "loopGradient", milli, "mΩ/m", source, origin(segment, "loopGradient"));
            length(working, segment, n);
            sum.add("z" + n + " * L" + n + " / 1000");
        }
        working.step("R12", "coldLoop", String.join(" + ", sum), "Ω", "");
    }
}
