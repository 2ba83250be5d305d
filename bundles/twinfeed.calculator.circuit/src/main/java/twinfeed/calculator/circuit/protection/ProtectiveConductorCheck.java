// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.MissingData;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.circuit.survey.FuseCurves;
import twinfeed.calculator.circuit.survey.LoopData;
import twinfeed.calculator.circuit.survey.LoopLimit;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.RunSegment;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.engineering.cable.FuseCurve;
import twinfeed.engineering.cable.Protection;
import twinfeed.engineering.numeric.Solution;
import twinfeed.model.assessment.Outcome;

/**
 * Whether the protective conductor stands the fault until the device disconnects.
 *
 * <p>Where the device's let-through energy is known, that counts. Otherwise the current is taken for the longest time that the
 * instant trip may need, which asks for more copper than the truth: a pass by it is a pass, a miss by it proves nothing and is
 * answered with "cannot tell".
 */
public final class ProtectiveConductorCheck implements CheckGroup {
    private final CircuitSurvey survey;
    private final LoopData loop;
    private final CircuitRemedies remedies;

    public ProtectiveConductorCheck(CircuitSurvey survey, LoopData loop, CircuitRemedies remedies) {
        this.survey = survey;
        this.loop = loop;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.ADIABATIC);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.ADIABATIC;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        if (!survey.run().namesWithoutCpc().isEmpty()) {
            findings.on(check)
                    .outcome(Outcome.FAILS)
                    .variant("none")
                    .argument("segments", survey.run().namesWithoutCpc())
                    .source(survey.cite("adiabatic"))
                    .remedies(() -> remedies.renewedCables(shower))
                    .add();
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        RunSegment thinnest = survey.run().thinnestCpc();
        if (thinnest == null) {
            MissingData.add(findings, check, survey.run().loopGap());
            return;
        }
        Double energyA2s = survey.device().letThroughA2s();
        Double ohm = faultLoopOhm();
        FuseCurve curve = FuseCurves.of(survey.rules(), survey.device());
        if (energyA2s != null && energyA2s > 0) {
            byEnergy(shower, findings, thinnest, energyA2s);
        } else if (curve != null && ohm != null) {
            byCurve(shower, findings, thinnest, curve, ohm);
        } else {
            byTime(shower, findings, thinnest);
        }
    }

    private FindingBuilder on(ShowerCase shower, Findings findings, RunSegment thinnest, double neededMm2) {
        double ratingA = survey.device().ratingA() == null ? 0 : survey.device().ratingA();
        return findings.on(CircuitChecks.ADIABATIC)
                .remedies(() -> remedies.forLoop(shower, ratingA))
                .compare(SiValues.m2(neededMm2), SiValues.m2(Objects.requireNonNull(thinnest.cpcMm2())))
                .condition(Condition.of(thinnest.name()))
                .source(survey.cite("adiabatic"));
    }

    private void byEnergy(ShowerCase shower, Findings findings, RunSegment thinnest, double energyA2s) {
        double k = survey.rules().number("k");
        on(shower, findings, thinnest, Protection.areaForLetThroughMm2(energyA2s, k))
                .variant("byEnergy")
                .argument("energy", energyA2s)
                .working(() -> Working.start()
                        .input("E", "letThrough", energyA2s, "A²s", "", ReadingPaths.LET_THROUGH)
                        .input("k", "materialFactor", k, "", survey.rules().source("k"))
                        .step("S", "neededConductor", "sqrt(E) / k", "mm²", survey.cite("adiabatic"))
                        .build())
                .add();
    }

    /**
     * A fuse by its published time/current characteristic; a residual-current device behind it ends the fault sooner. A current below
     * the characteristic does not blow it within its longest time: then only that device can end the fault.
     */
    private void byCurve(ShowerCase shower, Findings findings, RunSegment thinnest, FuseCurve curve, double ohm) {
        double currentA = Protection.faultCurrentA(survey.rules().number("voltage.nominal"), ohm);
        double arcingS = survey.rules().number("fuse.arcing");
        Solution fuse = curve.energyA2s(currentA, arcingS);
        double residualS = survey.protectedByResidual() ? survey.rules().number("rcd.trip") : Double.POSITIVE_INFINITY;
        double energyA2s = Math.min(fuse.orElse(Double.POSITIVE_INFINITY), currentA * currentA * residualS);
        if (Double.isInfinite(energyA2s)) {
            if (!addIfCarried(findings, thinnest, currentA)) {
                findings.on(CircuitChecks.ADIABATIC)
                        .outcome(Outcome.FAILS)
                        .variant("tooSlow")
                        .argument("current", currentA)
                        .argument("time", curve.longestS())
                        .condition(Condition.of(thinnest.name()))
                        .source(survey.rules().tableSource("loop"))
                        .remedies(() -> remedies.forLoop(
                                shower, Objects.requireNonNull(survey.device().ratingA())))
                        .add();
            }
            return;
        }
        double k = survey.rules().number("k");
        on(shower, findings, thinnest, Protection.areaForLetThroughMm2(energyA2s, k))
                .variant("byCurve")
                .argument("current", currentA)
                .argument("energy", energyA2s)
                .source(survey.rules().tableSource("loop"))
                .working(() -> Working.start()
                        .input(
                                "E",
                                "letThrough",
                                energyA2s,
                                "A²s",
                                survey.rules().tableSource("loop"))
                        .input("k", "materialFactor", k, "", survey.rules().source("k"))
                        .step("S", "neededConductor", "sqrt(E) / k", "mm²", survey.cite("adiabatic"))
                        .build())
                .add();
    }

    private void byTime(ShowerCase shower, Findings findings, RunSegment thinnest) {
        Check check = CircuitChecks.ADIABATIC;
        Double ohm = faultLoopOhm();
        if (ohm == null) {
            findings.on(check).cannotTell(missingLoop()).add();
            return;
        }
        Double timeS = timeS();
        double currentA = Protection.faultCurrentA(survey.rules().number("voltage.nominal"), ohm);
        double neededMm2 = timeS == null
                ? Double.POSITIVE_INFINITY
                : Protection.adiabaticAreaMm2(currentA, timeS, survey.rules().number("k"))
                        .orElse(Double.POSITIVE_INFINITY);
        if (timeS == null || LimitType.exceeds(neededMm2, Objects.requireNonNull(thinnest.cpcMm2()))) {
            if (addIfCarried(findings, thinnest, currentA)) {
                return;
            }
            findings.on(check)
                    .cannotTell(List.of(ReadingPaths.LET_THROUGH))
                    .variant("energyNeeded")
                    .argument("size", CodeNumbers.number(Objects.requireNonNull(thinnest.cpcMm2())))
                    .condition(Condition.of(thinnest.name()))
                    .add();
            return;
        }
        on(shower, findings, thinnest, neededMm2)
                .argument("current", currentA)
                .argument("time", timeS)
                .working(() -> working(timeS))
                .add();
    }

    /** A fault current that the conductors carry for ever, as with an electrode of some ohms, burns none: if so, the answer is added. */
    private boolean addIfCarried(Findings findings, RunSegment thinnest, double currentA) {
        Double carriedA = carriedA();
        if (carriedA == null || LimitType.exceeds(currentA, carriedA)) {
            return false;
        }
        findings.on(CircuitChecks.ADIABATIC)
                .outcome(Outcome.PASSES)
                .variant("carried")
                .argument("current", currentA)
                .argument("capacity", carriedA)
                .condition(Condition.of(thinnest.name()))
                .source(survey.cite("capacity"))
                .add();
        return true;
    }

    /** What the protective conductors carry for ever where they lie, A, as a line conductor of their size does; absent if not known. */
    private @Nullable Double carriedA() {
        double leastA = Double.POSITIVE_INFINITY;
        for (RunSegment segment : survey.run().segments()) {
            Double carriedA = segment.protectiveCapacityA(survey.rules().cables());
            if (carriedA == null) {
                return null;
            }
            leastA = Math.min(leastA, carriedA);
        }
        return leastA;
    }

    private Working working(double timeS) {
        Working.Builder working = Working.start();
        if (survey.feed().ownElectrode()) {
            working.input("Zc", "electrode", Objects.requireNonNull(faultLoopOhm()), "Ω", "", ReadingPaths.ELECTRODE);
        } else {
            loop.coldWorking(working, survey);
        }
        return working.input(
                        "U0",
                        "nominalVoltage",
                        survey.rules().number("voltage.nominal"),
                        "V",
                        survey.rules().source("voltage.nominal"))
                .step("I", "faultCurrent", "U0 / Zc", "A", "")
                .input("t", "disconnectionTime", timeS, "s", survey.rules().source("adiabatic.time"))
                .input(
                        "k",
                        "materialFactor",
                        survey.rules().number("k"),
                        "",
                        survey.rules().source("k"))
                .step("S", "neededConductor", "sqrt(I^2 * t) / k", "mm²", survey.cite("adiabatic"))
                .build();
    }

    /** With an own electrode its resistance alone bounds the current; the conductors would only lessen it. */
    private @Nullable Double faultLoopOhm() {
        Double ohm = survey.feed().ownElectrode() ? survey.feed().electrodeOhm() : loop.coldOhm();
        return ohm != null && ohm > 0 ? ohm : null;
    }

    private List<String> missingLoop() {
        if (survey.feed().ownElectrode()) {
            return List.of(ReadingPaths.ELECTRODE);
        }
        List<String> missing = new ArrayList<>(loop.missing());
        if (missing.isEmpty()) {
            missing.add(ReadingPaths.EXTERNAL_LOOP);
        }
        return missing;
    }

    /** The longest time for which the fault lasts, s; absent where the device's curve would be needed. */
    private @Nullable Double timeS() {
        DeviceKind kind = survey.device().kind();
        Double ratingA = survey.device().ratingA();
        if (instant(kind, ratingA)) {
            return survey.rules().number("adiabatic.time");
        }
        return survey.protectedByResidual() ? Double.valueOf(survey.rules().number("rcd.trip")) : null;
    }

    private boolean instant(@Nullable DeviceKind kind, @Nullable Double ratingA) {
        if (kind == null
                || ratingA == null
                || kind.multiple().isEmpty()
                || survey.feed().ownElectrode()) {
            return false;
        }
        Double limitOhm = LoopLimit.ohm(survey.rules(), kind, ratingA);
        Double ohm = loop.ohm();
        double share = loop.way() == LoopData.Way.MEASURED ? survey.rules().number("measured.factor") : 1;
        return limitOhm != null && ohm != null && !LimitType.exceeds(ohm, limitOhm * share);
    }
}
