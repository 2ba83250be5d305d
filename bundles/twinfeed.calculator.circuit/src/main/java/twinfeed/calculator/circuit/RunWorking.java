// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import twinfeed.calculator.Working;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.engineering.Cable;
import twinfeed.engineering.CableSegment;
import twinfeed.engineering.ConductorTemperature;

/** The lines of workings that go through the cable run segment by segment. */
final class RunWorking {
    private RunWorking() {}

    private static String cite(RunSegment segment, String source) {
        return segment.name() + "; " + source;
    }

    /** Adds the drop of each segment and their sum dU for the design current Ib, which stands above. */
    static void drops(Working.Builder working, CircuitSurvey survey) {
        List<String> sum = new ArrayList<>();
        for (RunSegment segment : survey.run().segments()) {
            int n = sum.size() + 1;
            gradient(working, survey.rules(), segment, n);
            working.step("dU" + n, "segmentDrop", "g" + n + " * L" + n + " * Ib / 1000", "V", segment.name());
            sum.add("dU" + n);
        }
        working.step("dU", "drop", String.join(" + ", sum), "V", survey.cite("drop"));
    }

    private static void gradient(Working.Builder working, RuleSet rules, RunSegment segment, int n) {
        double mV = Objects.requireNonNull(segment.size()).dropVPerAm() * 1000;
        working.input("g" + n, "dropGradient", mV, "mV/A/m", cite(segment, rules.tableSource("cables")));
        working.input("L" + n, "length", Objects.requireNonNull(segment.lengthM()), "m", segment.name());
    }

    /** Adds the loop resistance r of the run at a current I, which stands above, segment by segment. */
    static void resistance(Working.Builder working, CircuitSurvey survey, double currentA) {
        List<CableSegment> placed = Objects.requireNonNull(survey.run().placed());
        List<String> sum = new ArrayList<>();
        for (int at = 0; at < placed.size(); at++) {
            int n = at + 1;
            RunSegment segment = survey.run().segments().get(at);
            gradient(working, survey.rules(), segment, n);
            temperatureFactor(working, survey, placed.get(at), n, currentA);
            sum.add("g" + n + " * L" + n + " * Ct" + n + " / 1000");
        }
        working.step("r", "loopResistance", String.join(" + ", sum), "ohm", survey.cite("drop"));
    }

    private static void temperatureFactor(
            Working.Builder working, CircuitSurvey survey, CableSegment segment, int n, double currentA) {
        String source = survey.cite("drop");
        if (segment.ci() < 1 || segment.cf() < 1) {
            double factor = Cable.temperatureFactor(segment, currentA, ConductorTemperature.BY_CURRENT);
            working.input("Ct" + n, "temperatureFactorFull", factor, "", source);
            return;
        }
        working.input(
                "It" + n,
                "tabulatedCapacity",
                segment.tabulatedA(),
                "A",
                survey.rules().tableSource("capacity"));
        working.input("Ca" + n, "ambientFactorCapped", Math.min(1, segment.ca()), "", source);
        working.input(
                "Cg" + n, "groupingFactor", segment.cg(), "", survey.rules().tableSource("grouping"));
        working.step(
                "Ct" + n,
                "temperatureFactor",
                "(230 + 70 - (Ca" + n + "^2 * Cg" + n + "^2 - I^2 / It" + n + "^2) * (70 - 30)) / (230 + 70)",
                "",
                source);
    }

    /** Adds R1 + R2 of each segment at 20 degC and their sum R12. */
    static void loops(Working.Builder working, CircuitSurvey survey) {
        List<String> sum = new ArrayList<>();
        for (RunSegment segment : survey.run().segments()) {
            int n = sum.size() + 1;
            double milli = Objects.requireNonNull(segment.loopOhmPerM()) * 1000;
            String source = cite(segment, survey.rules().tableSource("conductors"));
            working.input("z" + n, "loopGradient", milli, "mohm/m", source);
            working.input("L" + n, "length", Objects.requireNonNull(segment.lengthM()), "m", segment.name());
            sum.add("z" + n + " * L" + n + " / 1000");
        }
        working.step("R12", "coldLoop", String.join(" + ", sum), "ohm", "");
    }
}
