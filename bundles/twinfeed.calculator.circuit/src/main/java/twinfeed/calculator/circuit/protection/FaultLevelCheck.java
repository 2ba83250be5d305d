// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.Rating;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.units.DisplayUnit;

/**
 * The larger prospective fault current against what device and consumer unit can break. A current that the device alone does not break may be
 * within the conditional rating of the consumer unit as a whole, behind the service fuse (BS EN 61439-3 annex ZB, from memory).
 */
public final class FaultLevelCheck implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public FaultLevelCheck(CircuitSurvey survey, CircuitRemedies remedies, Context context) {
        this.survey = survey;
        this.remedies = remedies;
        Double faultA = survey.feed().faultA();
        Double deviceA = survey.device().breakingA();
        if (faultA != null
                && deviceA != null
                && survey.feed().assemblyA() == null
                && !LimitType.exceeds(faultA, deviceA)) {
            context.assume("assemblyRating", Map.of());
        }
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.FAULT_LEVEL);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.FAULT_LEVEL;
        if (findings.blocked(check)) {
            return;
        }
        double faultA = orZero(survey.feed().faultA());
        double deviceA = orZero(survey.device().breakingA());
        Double assemblyA = survey.feed().assemblyA();
        if (LimitType.exceeds(faultA, deviceA) && assemblyMayBeRated(faultA)) {
            List<String> missing = missing();
            if (!missing.isEmpty()) {
                findings.on(check)
                        .cannotTell(missing)
                        .variant("assembly")
                        .argument("device", DisplayUnit.KILOAMPERE.amount(deviceA))
                        .add();
                return;
            }
            if (holdsInAssembly(faultA)) {
                conditional(findings, faultA, deviceA);
                return;
            }
        }
        double limitA = assemblyA == null ? deviceA : Math.min(deviceA, assemblyA);
        findings.on(check)
                .compare(faultA, limitA)
                .argument("device", DisplayUnit.KILOAMPERE.amount(deviceA))
                .source(survey.cite("fault"))
                .working(() -> limit(Working.start(), deviceA, assemblyA)
                        .input("Ipf", "prospectiveFault", DisplayUnit.KILOAMPERE.amount(faultA), "", ReadingPaths.FAULT)
                        .build())
                .remedies(() -> remedies.newConsumerUnit(shower))
                .add();
    }

    /** A consumer unit for breakers can be rated as a whole; a board of rewirable or cartridge fuses is not. */
    private boolean assemblyMayBeRated(double faultA) {
        return !survey.device().family(DeviceKind.Family.FUSE)
                && !LimitType.exceeds(faultA, survey.rules().number("assembly.new"));
    }

    /** What has to be known before anybody can say whether the consumer unit as a whole is rated for the current. */
    private List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (survey.feed().assemblyA() == null) {
            missing.add(ReadingPaths.ASSEMBLY_RATING);
        }
        if (survey.feed().fuseA() == null) {
            missing.add(ReadingPaths.SERVICE_FUSE);
        }
        if (survey.feed().approved() == null) {
            missing.add(ReadingPaths.APPROVED);
        }
        return missing;
    }

    /** The rating is that of the unit with devices that its maker names, behind a service fuse that helps them to break the current. */
    private boolean holdsInAssembly(double faultA) {
        return Boolean.TRUE.equals(survey.feed().approved())
                && !LimitType.exceeds(
                        orZero(survey.feed().fuseA()), survey.rules().number("assembly.fuse"))
                && !LimitType.exceeds(faultA, orZero(survey.feed().assemblyA()));
    }

    private void conditional(Findings findings, double faultA, double deviceA) {
        double assemblyA = orZero(survey.feed().assemblyA());
        findings.on(CircuitChecks.FAULT_LEVEL)
                .compare(faultA, assemblyA)
                .variant("conditional")
                .argument("device", DisplayUnit.KILOAMPERE.amount(deviceA))
                .argument("fuse", orZero(survey.feed().fuseA()))
                .source(survey.rules().source("assembly.fuse"))
                .working(() -> Working.start()
                        .input(
                                LimitType.SYMBOL,
                                "assemblyRating",
                                DisplayUnit.KILOAMPERE.amount(assemblyA),
                                "",
                                ReadingPaths.ASSEMBLY_RATING)
                        .input("Ipf", "prospectiveFault", DisplayUnit.KILOAMPERE.amount(faultA), "", ReadingPaths.FAULT)
                        .build())
                .add();
    }

    private static Working.Builder limit(Working.Builder working, double deviceA, @Nullable Double assemblyA) {
        return new Rating(
                        "Icn", "breakingCapacity", DisplayUnit.KILOAMPERE.amount(deviceA), ReadingPaths.DEVICE_BREAKING)
                .addLimit(
                        working,
                        assemblyA == null
                                ? null
                                : new Rating(
                                        "Icc",
                                        "assemblyRating",
                                        DisplayUnit.KILOAMPERE.amount(assemblyA),
                                        ReadingPaths.ASSEMBLY_RATING));
    }

    /** Only for readings that the check has found to be there. */
    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
