// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Working;

/** The larger prospective fault current against what device and consumer unit can break. */
final class FaultLevelJudge implements Judge {
    private final CircuitSurvey survey;

    FaultLevelJudge(CircuitSurvey survey, Context context) {
        this.survey = survey;
        boolean comparable = survey.feed().faultA() != null && survey.device().breakingA() != null;
        if (comparable && survey.feed().assemblyA() == null) {
            context.assume("assemblyRating", Map.of());
        }
    }

    @Override
    public void judge(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.FAULT_LEVEL;
        if (findings.blocked(check)) {
            return;
        }
        double faultA = orZero(survey.feed().faultA());
        double deviceA = orZero(survey.device().breakingA());
        Double assemblyA = survey.feed().assemblyA();
        double limitA = assemblyA == null ? deviceA : Math.min(deviceA, assemblyA);
        findings.on(check)
                .compare(faultA / 1000, limitA / 1000)
                .argument("device", deviceA / 1000)
                .source(survey.cite("fault"))
                .working(() -> Working.start()
                        .input("Ipf", "prospectiveFault", faultA / 1000, "kA", "")
                        .build())
                .add();
    }

    /** Only for readings that the check has found to be there. */
    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
