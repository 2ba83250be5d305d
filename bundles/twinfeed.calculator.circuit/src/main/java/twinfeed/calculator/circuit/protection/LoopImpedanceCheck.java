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
            byResidual(findings, ohm, "byResidualOnly");
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
            byResidual(findings, ohm, "byResidual");
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
        if (limitOhm == null || ohm == null || ratingA == null || kind == null) {
            findings.on(check).add();
            return;
        }
        double share = share();
        DeviceKind usual = survey.rules()
                .devices()
                .find(survey.rules().text("device.new.kind"))
                .orElse(kind);
        double usualA = madeFor(usual, ratingA);
        boolean quicker = disconnects(usual, usualA, ohm, share, limitOhm);
        findings.on(check)
                .compare(ohm, limitOhm * share)
                .variant(quicker ? "quicker" : "")
                .argument("cure", quicker ? usual.title() : "")
                .argument("rating", usualA)
                .source(survey.cite("loop"))
                .working(() -> working(limitOhm))
                .add();
    }

    /** The rating in which a kind of device is made that comes next to another's: none is made of 30 A to follow a fuse of 30 A. */
    private static double madeFor(DeviceKind kind, double ratingA) {
        return kind.ratings().stream()
                .filter(each -> !LimitType.fallsShort(each, ratingA))
                .findFirst()
                .orElse(ratingA);
    }

    private double share() {
        return loop.way() == LoopData.Way.MEASURED ? survey.rules().number("measured.factor") : 1;
    }

    /** Whether a usual new breaker of a rating, A, disconnects in time where the present device with its limit does not. */
    private boolean disconnects(DeviceKind usual, double usualA, double ohm, double share, double limitOhm) {
        Double usualOhm = LoopLimit.ohm(survey.rules(), usual, usualA);
        return usualOhm != null && LimitType.exceeds(usualOhm, limitOhm) && !LimitType.exceeds(ohm, usualOhm * share);
    }

    private void byResidual(Findings findings, double ohm, String variant) {
        Double residualA = survey.residual().residualA();
        double limitOhm = survey.rules().number("touch.voltage") / (residualA == null ? 1 : residualA);
        findings.on(CircuitChecks.LOOP)
                .compare(ohm, limitOhm)
                .variant(variant)
                .argument("device", survey.device().word())
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
