// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ResidualData;
import twinfeed.calculator.circuit.survey.SharedRcd;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.circuit.survey.UpstreamData;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/** What the residual-current device carries: its rated current, what hangs behind it, and the standing leakage. */
public final class ResidualLoadChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public ResidualLoadChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.RCD_RATING, CircuitChecks.RCD_SCOPE, CircuitChecks.LEAKAGE);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        rating(shower, findings);
        scope(findings);
        leakage(shower, findings);
    }

    private void rating(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.RCD_RATING;
        SharedRcd shared = survey.sharedRcd();
        if (shared == null && survey.residual().kind() != null) {
            findings.on(check).add();
            return;
        }
        if (findings.blocked(check) || shared == null) {
            return;
        }
        ShowerLoad load = shower.load();
        Double ratedA = shared.ratingA();
        Double othersA = shared.othersA();
        if (load == null || ratedA == null || othersA == null) {
            findings.on(check).cannotTell(missing(shower, shared)).add();
            return;
        }
        rating(shower, findings, load, shared);
    }

    private void rating(ShowerCase shower, Findings findings, ShowerLoad load, SharedRcd shared) {
        double ratedA = Objects.requireNonNull(shared.ratingA());
        double othersA = Objects.requireNonNull(shared.othersA());
        findings.on(CircuitChecks.RCD_RATING)
                .compare(load.designA() + othersA, ratedA)
                .argument("others", othersA)
                .source(survey.cite("rcd.rating"))
                .limitIs("residualDeviceRating", shared.ratingOrigin())
                .working(() -> load.working()
                        .input("Io", "otherCircuits", othersA, "A", "", shared.othersOrigin())
                        .step("I", "residualDeviceCurrent", "Ib + Io", "A", survey.cite("rcd.rating"))
                        .build())
                .remedies(() -> remedies.relieving(shower))
                .add();
    }

    private static List<String> missing(ShowerCase shower, SharedRcd shared) {
        List<String> missing = new ArrayList<>(shower.missingRating());
        if (shared.ratingA() == null) {
            missing.add(shared.upstream() ? ReadingPaths.UPSTREAM_RATING : ReadingPaths.RCD_RATING);
        }
        if (shared.othersA() == null) {
            missing.add(shared.upstream() ? ReadingPaths.UPSTREAM_LOAD : ReadingPaths.RCD_LOAD);
        }
        return missing;
    }

    private void scope(Findings findings) {
        Check check = CircuitChecks.RCD_SCOPE;
        ResidualData residual = survey.residual();
        if (residual.none()) {
            findings.on(check).add();
            return;
        }
        RcdScope scope = residual.scope();
        if (residual.kind() == null || scope == null) {
            findings.on(check)
                    .cannotTell(List.of(residual.kind() == null ? ReadingPaths.RCD_KIND : ReadingPaths.RCD_SCOPE))
                    .add();
            return;
        }
        if (residual.kind() == RcdKind.RCBO && behindHouseWide()) {
            findings.on(check)
                    .outcome(Outcome.FAILS)
                    .variant("behind")
                    .source(survey.cite("rcd.scope"))
                    .add();
            return;
        }
        findings.on(check)
                .outcome(scope == RcdScope.HOUSE ? Outcome.FAILS : Outcome.PASSES)
                .variant(scope == RcdScope.SEVERAL ? "several" : "")
                .source(survey.cite("rcd.scope"))
                .add();
    }

    /** An RCBO behind a house-wide device that is not delayed does not trip alone. */
    private boolean behindHouseWide() {
        UpstreamData upstream = survey.upstream();
        return upstream.there() && !upstream.delayed() && upstream.scope() == RcdScope.HOUSE;
    }

    private void leakage(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.LEAKAGE;
        ResidualData residual = survey.residual();
        if (residual.none()) {
            findings.on(check).add();
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        Double residualA = residual.residualA();
        if (residualA == null) {
            findings.on(check).cannotTell(List.of(ReadingPaths.RCD_RESIDUAL)).add();
            return;
        }
        double powerW = shower.heater().getPower().si();
        double leakageA = Math.min(
                survey.rules().number("leakage.watt") * powerW, survey.rules().number("leakage.most"));
        findings.on(check)
                .compare(leakageA, survey.rules().number("rcd.standing.share") * residualA)
                .variant(residual.scope() == RcdScope.CIRCUIT ? "" : "shared")
                .source(survey.rules().source("rcd.standing.share"))
                .working(() -> leakage(shower, powerW, residualA))
                .add();
    }

    private Working leakage(ShowerCase shower, double powerW, double residualA) {
        RuleSet rules = survey.rules();
        double perKilowatt = rules.number("leakage.watt") * 1e6;
        return Working.start()
                .input("IdN", "ratedResidual", DisplayUnit.MILLIAMPERE.amount(residualA), "", ReadingPaths.RCD_RESIDUAL)
                .input("s", "standingShare", rules.number("rcd.standing.share"), "", rules.source("rcd.standing.share"))
                .step(LimitType.SYMBOL, "standingMost", "s * IdN", "mA", "")
                .input("Pr", "ratedPower", Kind.POWER.amount(powerW), "", Origin.heater(shower.heater(), "power"))
                .input("i", "leakageByPower", perKilowatt, "mA/kW", rules.source("leakage.watt"))
                .input(
                        "imax",
                        "leakageMost",
                        DisplayUnit.MILLIAMPERE.amount(rules.number("leakage.most")),
                        rules.source("leakage.most"))
                .step("IL", "standingLeakage", "min(i * Pr, imax)", "mA", "")
                .build();
    }
}
