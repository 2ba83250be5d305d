// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.installation;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.Survey;

/** What the papers of a heater say: whether its maker recalled it, and whether the one that is there is still under guarantee. */
public final class HeaterRecordChecks implements CheckGroup {
    private final @Nullable PresentUnit unit;
    private final @Nullable LocalDate today;

    /** The day of the survey is the day that counts: the answer is the same whenever it is asked for. */
    public HeaterRecordChecks(Survey survey) {
        this.unit = survey.getUnit();
        this.today = survey.getTakenOn();
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.RECALL, CircuitChecks.GUARANTEE);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        recall(shower, findings);
        guarantee(shower, findings);
    }

    private static void recall(ShowerCase shower, Findings findings) {
        LocalDate recalled = shower.heater().getRecalledOn();
        if (recalled == null) {
            findings.on(CircuitChecks.RECALL).add();
            return;
        }
        findings.on(CircuitChecks.RECALL)
                .outcome(Outcome.FAILS)
                .variant(shower.present() ? "present" : "")
                .argument("date", recalled.toString())
                .add();
    }

    private void guarantee(ShowerCase shower, Findings findings) {
        Boolean valid = shower.present() ? valid(shower.heater().getGuaranteeYears()) : null;
        if (valid == null) {
            findings.on(CircuitChecks.GUARANTEE).add();
            return;
        }
        findings.on(CircuitChecks.GUARANTEE)
                .outcome(Outcome.PASSES)
                .variant(valid ? "valid" : "")
                .add();
    }

    /** By the last day that its papers name, else by its age in whole years; absent where neither tells. */
    private @Nullable Boolean valid(@Nullable Integer years) {
        if (unit == null) {
            return null;
        }
        if (unit.getGuaranteeUntil() != null && today != null) {
            return !today.isAfter(unit.getGuaranteeUntil());
        }
        return years == null || unit.getAge() == null ? null : Boolean.valueOf(unit.getAge() < years);
    }
}
