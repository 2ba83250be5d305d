// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.MissingData;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.RunSegment;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.CableSize;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.engineering.numeric.Solution;
import twinfeed.units.Kind;

/** How strong a heater the circuit carries as it is. */
public final class HighestPowerCheck implements CheckGroup {
    private final CircuitSurvey survey;

    public HighestPowerCheck(CircuitSurvey survey) {
        this.survey = survey;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.HIGHEST_POWER);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.HIGHEST_POWER;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        List<CableSegment> placed = survey.run().placed();
        Double ratedV = SiValues.of(shower.heater().getVoltage());
        Double ratingA = survey.device().ratingA();
        if (placed == null || ratedV == null || ratingA == null || ratedV <= 0) {
            unknown(shower, findings, check, placed == null);
            return;
        }
        Solution power = Cable.highestPowerW(ratingA, ratedV, placed, survey.dropLimitV());
        if (!power.isPresent()) {
            findings.on(check).variant("unprotected").add();
            return;
        }
        findings.on(check)
                .report(power.value())
                .argument("voltage", ratedV)
                .variant(power.value() < ratedV * ratingA * (1 - 1e-9) ? "byDrop" : "byDevice")
                .source(survey.cite("overload"))
                .working(() -> powerWorking(ratedV, ratingA))
                .add();
    }

    private void unknown(ShowerCase shower, Findings findings, Check check, boolean run) {
        if (run) {
            MissingData.add(findings, check, survey.run().placingGap());
            return;
        }
        List<String> missing = new ArrayList<>();
        if (survey.device().ratingA() == null) {
            missing.add(ReadingPaths.DEVICE_RATING);
        }
        missing.addAll(shower.missingRating());
        findings.on(check).cannotTell(missing).add();
    }

    private Working powerWorking(double ratedV, double ratingA) {
        Working.Builder working = Working.start()
                .input("Ur", "ratedVoltage", ratedV, "V", "")
                .input("In", "deviceRating", ratingA, "A", "", survey.device().ratingOrigin());
        survey.addDropLimit(working, "dUmax");
        List<String> sum = new ArrayList<>();
        for (RunSegment segment : survey.run().segments()) {
            int n = sum.size() + 1;
            CableSize size = Objects.requireNonNull(segment.size());
            working.input(
                    "g" + n,
                    "dropGradient",
                    Kind.GRADIENT_VOLTAGE.amount(size.dropVPerAm()),
                    segment.name(),
                    ReadingPaths.ofSegment(segment.name(), "dropGradient"));
            working.input(
                    "L" + n,
                    "length",
                    orZero(segment.lengthM()),
                    "m",
                    segment.name(),
                    ReadingPaths.ofSegment(segment.name(), "length"));
            sum.add("g" + n + " * L" + n);
        }
        return working.step("r", "loopResistance", "(" + String.join(" + ", sum) + ") / 1000", "Ω", "")
                .step("P", "highestPower", "Ur * if(r * In <= dUmax, In, dUmax / r) / 1000", "kW", "")
                .build();
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
