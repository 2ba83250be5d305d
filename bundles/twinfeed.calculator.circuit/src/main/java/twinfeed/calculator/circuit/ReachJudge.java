// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Series;
import twinfeed.calculator.Working;
import twinfeed.calculator.rules.CableSize;
import twinfeed.engineering.Cable;
import twinfeed.engineering.CableSegment;
import twinfeed.engineering.Solution;

/** The inverse questions: how long may the cable be, and how strong a heater does the circuit carry. */
final class ReachJudge implements Judge {
    private final CircuitSurvey survey;

    ReachJudge(CircuitSurvey survey) {
        this.survey = survey;
    }

    @Override
    public void judge(ShowerCase shower, Findings findings) {
        longestRun(shower, findings);
        highestPower(shower, findings);
    }

    private double dropLimitV() {
        return survey.rules().number("drop.limit") * survey.rules().number("voltage.nominal");
    }

    private void longestRun(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.LONGEST_RUN;
        if (findings.blocked(check)) {
            return;
        }
        ShowerLoad load = shower.load();
        CableSize size = survey.run().segments().get(0).size();
        if (load == null || size == null) {
            if (load == null) {
                findings.on(check).cannotTell(shower.missingRating()).add();
            } else {
                Gaps.add(findings, check, survey.run().placingGap());
            }
            return;
        }
        findings.on(check)
                .report(longestM(size, load))
                .argument("size", Plain.number(size.sizeMm2()))
                .source(survey.cite("drop"))
                .series(series(load, size.cable()))
                .working(() -> working(load, size))
                .add();
    }

    private double longestM(CableSize size, ShowerLoad load) {
        return Cable.longestRunByDropM(dropLimitV(), 0, size.dropVPerAm(), load.designA())
                .orElse(0);
    }

    private Series series(ShowerLoad load, String cable) {
        List<CableSize> sizes = survey.rules().cables().sizes(cable);
        return new Series(
                "longestRun",
                new Series.Axis("cableSize", "mm²"),
                new Series.Axis("length", "m"),
                sizes.stream().map(size -> Plain.number(size.sizeMm2())).toList(),
                sizes.stream().mapToDouble(CableSize::sizeMm2).toArray(),
                sizes.stream().mapToDouble(size -> longestM(size, load)).toArray());
    }

    private Working working(ShowerLoad load, CableSize size) {
        return LoadJudge.working(load)
                .input("dUmax", "dropLimit", dropLimitV(), "V", survey.rules().source("drop.limit"))
                .input(
                        "g",
                        "dropGradient",
                        size.dropVPerAm() * 1000,
                        "mV/A/m",
                        survey.rules().tableSource("cables"))
                .step("L", "longestRun", "dUmax / (g / 1000 * Ib)", "m", survey.cite("drop"))
                .build();
    }

    private void highestPower(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.HIGHEST_POWER;
        if (findings.blocked(check)) {
            return;
        }
        List<CableSegment> placed = survey.run().placed();
        Double ratedV = Si.of(shower.heater().getVoltage());
        Double ratingA = survey.device().ratingA();
        if (placed == null || ratedV == null || ratingA == null || ratedV <= 0) {
            unknown(shower, findings, check, placed == null);
            return;
        }
        Solution power = Cable.highestPowerW(ratingA, ratedV, placed, dropLimitV());
        if (!power.isPresent()) {
            findings.on(check).variant("unprotected").add();
            return;
        }
        findings.on(check)
                .report(power.value() / 1000)
                .argument("voltage", ratedV)
                .variant(power.value() < ratedV * ratingA * (1 - 1e-9) ? "byDrop" : "byDevice")
                .source(survey.cite("overload"))
                .working(() -> powerWorking(ratedV, ratingA))
                .add();
    }

    private void unknown(ShowerCase shower, Findings findings, Check check, boolean run) {
        if (run) {
            Gaps.add(findings, check, survey.run().placingGap());
            return;
        }
        List<String> missing = new ArrayList<>();
        if (survey.device().ratingA() == null) {
            missing.add(Paths.DEVICE_RATING);
        }
        missing.addAll(shower.missingRating());
        findings.on(check).cannotTell(missing).add();
    }

    private Working powerWorking(double ratedV, double ratingA) {
        Working.Builder working = Working.start()
                .input("Ur", "ratedVoltage", ratedV, "V", "")
                .input("In", "deviceRating", ratingA, "A", "")
                .input("dUmax", "dropLimit", dropLimitV(), "V", survey.rules().source("drop.limit"));
        List<String> sum = new ArrayList<>();
        for (RunSegment segment : survey.run().segments()) {
            int n = sum.size() + 1;
            CableSize size = Objects.requireNonNull(segment.size());
            working.input("g" + n, "dropGradient", size.dropVPerAm() * 1000, "mV/A/m", segment.name());
            working.input("L" + n, "length", orZero(segment.lengthM()), "m", segment.name());
            sum.add("g" + n + " * L" + n);
        }
        return working.step("r", "loopResistance", "(" + String.join(" + ", sum) + ") / 1000", "ohm", "")
                .step("P", "highestPower", "Ur * if(r * In <= dUmax, In, dUmax / r) / 1000", "kW", "")
                .build();
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
