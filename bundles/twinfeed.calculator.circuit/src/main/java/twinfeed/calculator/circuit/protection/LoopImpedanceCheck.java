// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.protection;

import java.util.List;
import java.util.Objects;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.MissingData;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.LoopData;
import twinfeed.calculator.circuit.survey.LoopLimit;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.units.DisplayUnit;

/** Fault protection with an earth from the supply: loop impedance against the device, or disconnection by the RCD. */
public final class LoopImpedanceCheck implements CheckGroup {
    private final CircuitSurvey survey;
    private final LoopData loop;
    private final CircuitRemedies remedies;

    public LoopImpedanceCheck(CircuitSurvey survey, LoopData loop, CircuitRemedies remedies) {
        this.survey = survey;
        this.loop = loop;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.LOOP, CircuitChecks.LOOP_BY_BREAKER);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        loop(shower, findings);
        byBreaker(findings);
    }

    private void loop(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.LOOP;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        if (!survey.run().namesWithoutCpc().isEmpty()) {
            findings.on(check).variant("withoutCpc").add();
            return;
        }
        if (survey.feed().ownElectrode()) {
            findings.on(check).variant("ownElectrode").add();
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        Double ohm = loop.ohm();
        if (ohm == null) {
            unknownLoop(findings, check);
            return;
        }
        DeviceKind kind = survey.device().kind();
        Double ratingA = survey.device().ratingA();
        Double limitOhm = kind == null || ratingA == null ? null : LoopLimit.ohm(survey.rules(), kind, ratingA);
        if (limitOhm == null) {
            unknownLimit(findings, check, ohm);
            return;
        }
        answer(shower, findings, ohm, limitOhm, ratingA == null ? 0 : ratingA);
    }

    private void unknownLoop(Findings findings, Check check) {
        if (loop.missing().size() == 1 && !loop.gap().what().isEmpty()) {
            MissingData.add(findings, check, loop.gap());
        } else {
            findings.on(check).cannotTell(loop.missing()).add();
        }
    }

    /** The limit of a device that the rule set has no line for is not guessed; the RCD may answer all the same. */
    private void unknownLimit(Findings findings, Check check, double ohm) {
        if (survey.protectedByResidual()) {
            byResidual(findings, ohm);
            return;
        }
        findings.on(check)
                .cannotTell(List.of(
                        survey.device().ratingA() == null ? ReadingPaths.DEVICE_RATING : ReadingPaths.DEVICE_KIND))
                .variant("noLimit")
                .argument("device", survey.device().word())
                .add();
    }

    private void answer(ShowerCase shower, Findings findings, double ohm, double limitOhm, double ratingA) {
        double share = share();
        if (LimitType.exceeds(ohm, limitOhm * share) && survey.protectedByResidual()) {
            byResidual(findings, ohm);
            return;
        }
        FindingBuilder finding = findings.on(CircuitChecks.LOOP)
                .compare(ohm, limitOhm * share)
                .variant(loop.way().key())
                .argument("table", limitOhm)
                .argument("share", DisplayUnit.PERCENT.amount(share))
                .source(survey.cite("loop"))
                .working(() -> working(limitOhm));
        finding.remedies(() -> remedies.forLoop(shower, ratingA));
        finding.add();
    }

    /**
     * Whether breaker or fuse alone would disconnect. Where only the residual-current device does, that is a pass, and is said all the
     * same, with the type of breaker that would cure it.
     */
    private void byBreaker(Findings findings) {
        Check check = CircuitChecks.LOOP_BY_BREAKER;
        DeviceKind kind = survey.device().kind();
        Double ratingA = survey.device().ratingA();
        Double ohm = loop.ohm();
        boolean applies = !survey.feed().ownElectrode()
                && !survey.run().old()
                && survey.run().namesWithoutCpc().isEmpty();
        Double limitOhm =
                !applies || kind == null || ratingA == null ? null : LoopLimit.ohm(survey.rules(), kind, ratingA);
        if (limitOhm == null || ohm == null || ratingA == null) {
            findings.on(check).add();
            return;
        }
        double share = share();
        String cure = quickerBreaker(ohm, share, limitOhm, ratingA);
        findings.on(check)
                .compare(ohm, limitOhm * share)
                .variant(cure.isEmpty() ? "" : "quicker")
                .argument("cure", cure)
                .argument("rating", ratingA)
                .source(survey.cite("loop"))
                .working(() -> working(limitOhm))
                .add();
    }

    private double share() {
        return loop.way() == LoopData.Way.MEASURED ? survey.rules().number("measured.factor") : 1;
    }

    /** The title of the usual new breaker where that, of the present rating, disconnects in time; empty where it would not. */
    private String quickerBreaker(double ohm, double share, double limitOhm, double ratingA) {
        return survey.rules()
                .devices()
                .find(survey.rules().text("device.new.kind"))
                .filter(usual -> {
                    Double usualOhm = LoopLimit.ohm(survey.rules(), usual, ratingA);
                    return usualOhm != null
                            && LimitType.exceeds(usualOhm, limitOhm)
                            && !LimitType.exceeds(ohm, usualOhm * share);
                })
                .map(DeviceKind::title)
                .orElse("");
    }

    private void byResidual(Findings findings, double ohm) {
        Double residualA = survey.residual().residualA();
        double limitOhm = survey.rules().number("touch.voltage") / (residualA == null ? 1 : residualA);
        findings.on(CircuitChecks.LOOP)
                .compare(ohm, limitOhm)
                .variant("byResidual")
                .argument("residual", DisplayUnit.MILLIAMPERE.amount(residualA == null ? 0 : residualA))
                .source(survey.cite("loop.rcd"))
                .working(this::residualWorking)
                .add();
    }

    private Working working(double limitOhm) {
        Working.Builder working = Working.start();
        LoopLimit.working(working, survey, limitOhm, share());
        loop.working(working, survey);
        return working.build();
    }

    private Working residualWorking() {
        Working.Builder working = Working.start();
        double residualA = Objects.requireNonNullElse(survey.residual().residualA(), 1.0);
        working.input("IdN", "ratedResidual", DisplayUnit.MILLIAMPERE.amount(residualA), "", ReadingPaths.RCD_RESIDUAL)
                .rule("Ut", "touchVoltage", survey.rules(), "touch.voltage", "V")
                .step(LimitType.SYMBOL, "loopLimit", "Ut / IdN * 1000", "Ω", survey.cite("loop.rcd"));
        loop.working(working, survey);
        return working.build();
    }
}
