// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.cable.Protection;

/**
 * The earth fault loop of the circuit, from a reading or by calculation, never from both.
 *
 * @param way how it was had
 * @param ohm Zs as it is compared with the limit: as measured cold, or warm by calculation; absent if it cannot be told
 * @param coldOhm Zs with cold conductors, ohm, for the largest fault current
 * @param missing readings that are missing, if it cannot be told
 * @param gap what is in no table, if it cannot be told
 */
public record LoopData(
        Way way, @Nullable Double ohm, @Nullable Double coldOhm, List<String> missing, CableRun.Gap gap) {

    /** How a loop impedance was had. */
    public enum Way {
        /** Measured at the far end, cold: 80 % of the limit holds. */
        MEASURED("measured"),
        /** Ze and a cold reading of R1 + R2, warmed by calculation. */
        MEASURED_LINE("measuredLine"),
        /** Ze and tabulated conductors, warmed by calculation. */
        CALCULATED("calculated");

        private final String key;

        Way(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    public static LoopData of(CircuitSurvey survey) {
        Double measured = survey.readings().loopOhm();
        if (measured != null && measured > 0) {
            return new LoopData(Way.MEASURED, measured, measured, List.of(), CableRun.Gap.NO_RUN);
        }
        Double externalOhm = survey.feed().externalOhm();
        Double lineOhm = survey.readings().lineOhm();
        Double coldOhm = lineOhm == null ? survey.run().coldLoopOhm() : lineOhm;
        Way way = lineOhm == null ? Way.CALCULATED : Way.MEASURED_LINE;
        if (externalOhm == null || coldOhm == null || externalOhm < 0 || coldOhm < 0) {
            return unknown(survey, way, externalOhm, coldOhm);
        }
        double hot = survey.rules().number("hot.factor");
        return new LoopData(
                way,
                Protection.loopImpedanceOhm(externalOhm, coldOhm * hot),
                Protection.loopImpedanceOhm(externalOhm, coldOhm),
                List.of(),
                CableRun.Gap.NO_RUN);
    }

    private static LoopData unknown(
            CircuitSurvey survey, Way way, @Nullable Double externalOhm, @Nullable Double coldOhm) {
        List<String> missing = new ArrayList<>();
        if (externalOhm == null || externalOhm < 0) {
            missing.add(ReadingPaths.EXTERNAL_LOOP);
        }
        CableRun.Gap gap = coldOhm == null ? survey.run().loopGap() : CableRun.Gap.NO_RUN;
        if (coldOhm == null) {
            missing.add(gap.path());
        }
        return new LoopData(way, null, null, missing, gap);
    }

    /** Adds the lines that end in Zs. */
    public void working(Working.Builder working, CircuitSurvey survey) {
        if (way == Way.MEASURED) {
            working.input(
                    "Zs",
                    "measuredLoop",
                    Objects.requireNonNull(ohm),
                    "Ω",
                    "",
                    "survey.electricity.circuit.measuredLoop");
            return;
        }
        parts(working, survey);
        working.rule("h", "hotFactor", survey.rules(), "hot.factor", "");
        working.step("Zs", "loopImpedance", "Ze + h * R12", "Ω", survey.cite("loop"));
    }

    /** Adds the lines that end in Zc, the loop with cold conductors. */
    public void coldWorking(Working.Builder working, CircuitSurvey survey) {
        if (way == Way.MEASURED) {
            working.input(
                    "Zc",
                    "measuredLoop",
                    Objects.requireNonNull(coldOhm),
                    "Ω",
                    "",
                    "survey.electricity.circuit.measuredLoop");
            return;
        }
        parts(working, survey);
        working.step("Zc", "coldLoopImpedance", "Ze + R12", "Ω", survey.cite("loop"));
    }

    private void parts(Working.Builder working, CircuitSurvey survey) {
        working.input(
                "Ze",
                "externalLoop",
                Objects.requireNonNull(survey.feed().externalOhm()),
                "Ω",
                "",
                ReadingPaths.EXTERNAL_LOOP);
        if (way == Way.MEASURED_LINE) {
            working.input(
                    "R12",
                    "measuredLine",
                    Objects.requireNonNull(survey.readings().lineOhm()),
                    "Ω",
                    "",
                    "survey.electricity.circuit.measuredLine");
        } else {
            CableRunWorking.loops(working, survey);
        }
    }
}
