// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.Working;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.engineering.demand.DiversityLoad;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.units.Current;

/** Judges the demand of one house with each heater in place of the present one. */
final class DemandAssessor implements Assessor {
    private final RuleSet rules;
    private final @Nullable ElectricalFeed feed;
    private final HouseLoads house;
    private final DiversityRules diversity;
    private final SecondShower second;

    DemandAssessor(Context context) {
        this.rules = context.rules();
        this.feed = context.survey().getElectricity();
        this.house = HouseLoads.of(context);
        this.diversity = new DiversityRules(rules);
        this.second = SecondShower.of(feed, rules.number("voltage.nominal"));
    }

    @Override
    public void assess(Candidate candidate, SharedQuantities exchange, Findings findings) {
        demand(exchange, findings);
        switchProtection(findings);
        secondShower(exchange, findings);
        operator(findings);
    }

    private void demand(SharedQuantities exchange, Findings findings) {
        against(exchange, findings, DemandChecks.FUSE, reading(true));
        against(exchange, findings, DemandChecks.SWITCH, reading(false));
    }

    private @Nullable Double reading(boolean fuse) {
        if (feed == null) {
            return null;
        }
        Current read = fuse ? feed.getServiceFuse() : feed.getMainSwitch();
        return read == null ? null : read.si();
    }

    private void against(SharedQuantities exchange, Findings findings, Check check, @Nullable Double limitA) {
        if (blocked(exchange, findings, check) || limitA == null) {
            return;
        }
        double showerA = exchange.take(SharedQuantity.DESIGN_CURRENT)[0];
        List<DiversityLoad> loads = loads(showerA);
        double demandA = diversity.demandA(loads);
        FindingBuilder finding = findings.on(check)
                .compare(demandA, limitA)
                .argument("shower", showerA)
                .source(rules.text("cite.demand"))
                .working(() -> DemandWorking.of(loads, diversity.list(), rules.text("cite.demand")));
        if (demandA > limitA) {
            remedies(check, limitA, demandA, showerA).forEach(finding::remedy);
        }
        finding.add();
    }

    private List<DiversityLoad> loads(double showerA) {
        return house.with(new DiversityLoad("shower to be judged", HouseLoads.SHOWER, showerA, false));
    }

    private List<Remedy> remedies(Check check, double limitA, double demandA, double showerA) {
        List<Remedy> remedies = new ArrayList<>();
        if (second.exists()) {
            remedies.add(second.priority(showerA));
        }
        if (check.equals(DemandChecks.SWITCH)) {
            remedies.addAll(DemandRemedies.largerSwitch(limitA, demandA));
        } else {
            remedies.addAll(DemandRemedies.largerFuse(limitA, demandA));
        }
        return remedies;
    }

    /** Whether something is missing without which the sum would be wrong; "cannot tell" is then added. */
    private boolean blocked(SharedQuantities exchange, Findings findings, Check check) {
        if (findings.blocked(check) || findings.blocked(check, exchange, SharedQuantity.DESIGN_CURRENT)) {
            return true;
        }
        if (!house.missing().isEmpty()) {
            findings.on(check).cannotTell(house.missing()).add();
            return true;
        }
        if (!diversity.knows(loads(0))) {
            findings.on(check)
                    .cannotTell(List.of(DemandChecks.LOADS))
                    .variant("noDiversity")
                    .add();
            return true;
        }
        return false;
    }

    /** A main switch below the service fuse is not protected by it; how far that matters its maker says. */
    private void switchProtection(Findings findings) {
        Check check = DemandChecks.SWITCH_PROTECTION;
        Double fuseA = reading(true);
        Double switchA = reading(false);
        if (findings.blocked(check) || fuseA == null || switchA == null) {
            return;
        }
        FindingBuilder finding = findings.on(check).compare(fuseA, switchA).working(() -> Working.start()
                .input("If", "serviceFuse", fuseA, "A", "")
                .build());
        if (fuseA > switchA) {
            DemandRemedies.largerSwitch(switchA, fuseA).forEach(finding::remedy);
        }
        finding.add();
    }

    /** Two showers at once, and what a priority unit would do. */
    private void secondShower(SharedQuantities exchange, Findings findings) {
        Check check = DemandChecks.SECOND_SHOWER;
        Double fuseA = reading(true);
        if (house.missing().isEmpty() && house.showers().isEmpty()) {
            findings.on(check).add();
            return;
        }
        if (blocked(exchange, findings, check) || fuseA == null) {
            return;
        }
        double showerA = exchange.take(SharedQuantity.DESIGN_CURRENT)[0];
        List<DiversityLoad> loads = loads(showerA);
        findings.on(check)
                .compare(diversity.demandA(loads), fuseA)
                .argument("single", diversity.demandA(withoutStrongestOther(loads, showerA)))
                .argument("others", house.showers().size())
                .source(rules.text("cite.demand"))
                .working(() -> DemandWorking.of(loads, diversity.list(), rules.text("cite.demand")))
                .add();
    }

    /** The loads as they count behind a priority unit between the new shower and the strongest other one. */
    private List<DiversityLoad> withoutStrongestOther(List<DiversityLoad> loads, double showerA) {
        DiversityLoad strongest = house.showers().stream()
                .max(Comparator.comparingDouble(DiversityLoad::currentA))
                .orElseThrow();
        List<DiversityLoad> reduced = new ArrayList<>(loads);
        reduced.remove(strongest);
        reduced.add(new DiversityLoad(
                strongest.id(), HouseLoads.SHOWER, Math.max(0, strongest.currentA() - showerA), false));
        return reduced;
    }

    private void operator(Findings findings) {
        Check check = DemandChecks.OPERATOR;
        if (findings.blocked(check)) {
            return;
        }
        Double fuseA = reading(true);
        boolean confirmed = feed != null && Boolean.TRUE.equals(feed.getServiceFuseConfirmed());
        findings.on(check)
                .outcome(confirmed ? Outcome.PASSES : Outcome.FAILS)
                .argument("fuse", fuseA == null ? 0 : fuseA)
                .add();
    }
}
