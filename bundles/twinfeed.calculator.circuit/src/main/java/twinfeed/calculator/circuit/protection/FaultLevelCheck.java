// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.protection;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.Rating;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.formula.Working;
import twinfeed.units.DisplayUnit;

/** The larger prospective fault current against what device and consumer unit can break. */
public final class FaultLevelCheck implements CheckGroup {
    private final CircuitSurvey survey;

    public FaultLevelCheck(CircuitSurvey survey, Context context) {
        this.survey = survey;
        boolean comparable = survey.feed().faultA() != null && survey.device().breakingA() != null;
        if (comparable && survey.feed().assemblyA() == null) {
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
        double limitA = assemblyA == null ? deviceA : Math.min(deviceA, assemblyA);
        findings.on(check)
                .compare(faultA, limitA)
                .argument("device", DisplayUnit.KILOAMPERE.amount(deviceA))
                .source(survey.cite("fault"))
                .working(() -> limit(Working.start(), deviceA, assemblyA)
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
