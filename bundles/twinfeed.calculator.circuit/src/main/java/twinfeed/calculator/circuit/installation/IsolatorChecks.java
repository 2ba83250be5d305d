// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.installation;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.IsolatorCondition;

/** The local double-pole isolator. */
public final class IsolatorChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public IsolatorChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.ISOLATOR_RATING, CircuitChecks.ISOLATOR_CONDITION, CircuitChecks.ISOLATOR_WEAR);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        rating(shower, findings);
        condition(shower, findings);
        wear(shower, findings);
    }

    private void rating(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.ISOLATOR_RATING;
        if (survey.isolator().none()) {
            findings.on(check)
                    .outcome(Outcome.FAILS)
                    .variant("none")
                    .source(survey.cite("isolator"))
                    .remedies(() -> remedies.isolators(shower))
                    .add();
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        ShowerLoad load = shower.load();
        Double deviceA = survey.device().ratingA();
        Double ratedA = survey.isolator().ratingA();
        if (load == null || deviceA == null || ratedA == null) {
            findings.on(check)
                    .cannotTell(load == null ? shower.missingRating() : List.of(ReadingPaths.DEVICE_RATING))
                    .add();
            return;
        }
        rating(shower, findings, load, deviceA, ratedA);
    }

    private void rating(ShowerCase shower, Findings findings, ShowerLoad load, double deviceA, double ratedA) {
        Double namedA = survey.isolator().namedA();
        boolean named = namedA != null && !LimitType.fallsShort(namedA, deviceA);
        double neededA = named ? load.designA() : Math.max(load.designA(), deviceA);
        FindingBuilder finding = findings.on(CircuitChecks.ISOLATOR_RATING)
                .compare(neededA, ratedA)
                .variant(named ? "named" : "")
                .argument("current", load.designA())
                .argument("device", deviceA)
                .source(survey.cite("isolator"))
                .limitIs("isolatorRating", ReadingPaths.ISOLATOR_RATING)
                .working(() -> working(load, deviceA, named));
        finding.remedies(() -> remedies.isolators(shower));
        finding.remedies(() -> remedies.devicesUpTo(shower, ratedA));
        finding.add();
    }

    private Working working(ShowerLoad load, double deviceA, boolean named) {
        Working.Builder working = load.working();
        if (named) {
            return working.step("Ineed", "neededSwitchNamed", "Ib", "A", survey.cite("isolator"))
                    .build();
        }
        return working.input(
                        "In", "deviceRating", deviceA, "A", "", survey.device().ratingOrigin())
                .step("Ineed", "neededSwitch", "max(Ib, In)", "A", survey.cite("isolator"))
                .build();
    }

    private void condition(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.ISOLATOR_CONDITION;
        if (survey.isolator().none()) {
            findings.on(check).variant("none").add();
            return;
        }
        IsolatorCondition condition = survey.isolator().condition();
        if (condition == null) {
            findings.on(check)
                    .cannotTell(List.of(ReadingPaths.ISOLATOR_CONDITION))
                    .add();
            return;
        }
        FindingBuilder finding = findings.on(check).source(survey.cite("isolator"));
        if (condition == IsolatorCondition.SCORCHED) {
            finding.remedies(() -> remedies.isolators(shower));
            finding.outcome(Outcome.FAILS).add();
        } else {
            finding.outcome(Outcome.PASSES)
                    .variant(condition == IsolatorCondition.WORN ? "worn" : "")
                    .add();
        }
    }

    /** Whether nobody looked is asked by the check of its condition; one that is scorched goes by that check. */
    private void wear(ShowerCase shower, Findings findings) {
        IsolatorCondition condition = survey.isolator().condition();
        FindingBuilder finding = findings.on(CircuitChecks.ISOLATOR_WEAR);
        if (survey.isolator().none() || condition == null || condition == IsolatorCondition.SCORCHED) {
            finding.add();
            return;
        }
        boolean worn = condition == IsolatorCondition.WORN;
        finding.source(survey.cite("isolator.wear"));
        finding.remedies(() -> remedies.renewedIsolators(shower));
        finding.outcome(worn ? Outcome.FAILS : Outcome.PASSES).add();
    }
}
