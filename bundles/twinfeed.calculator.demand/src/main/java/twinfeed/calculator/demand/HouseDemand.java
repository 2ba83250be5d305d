// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.engineering.demand.DiversityLoad;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.units.Current;

/**
 * What a house draws at once, with a heater in place of the present one.
 *
 * @param rules the rule set
 * @param feed its electrical feed
 * @param house its other loads
 * @param diversity the diversity of the rule set
 * @param present the shower that is there
 */
record HouseDemand(
        RuleSet rules, @Nullable ElectricalFeed feed, HouseLoads house, DiversityRules diversity, PresentLoad present) {
    static HouseDemand of(Context context) {
        return new HouseDemand(
                context.rules(),
                context.survey().getElectricity(),
                HouseLoads.of(context),
                new DiversityRules(context.rules()),
                PresentLoad.of(context.survey()));
    }

    @Nullable
    Double fuseA() {
        return feed == null ? null : si(feed.getServiceFuse());
    }

    @Nullable
    Double switchA() {
        return feed == null ? null : si(feed.getMainSwitch());
    }

    private static @Nullable Double si(@Nullable Current reading) {
        return reading == null ? null : reading.si();
    }

    List<DiversityLoad> loads(double showerA) {
        return house.with(judged(showerA));
    }

    private static DiversityLoad judged(double showerA) {
        return new DiversityLoad("shower to be judged", HouseLoads.SHOWER, showerA, false);
    }

    double demandA(List<DiversityLoad> loads) {
        return diversity.demandA(loads);
    }

    Working working(List<DiversityLoad> loads, ShowerCase shower, double showerA) {
        Map<DiversityLoad, CurrentSource> currents = new HashMap<>();
        for (int at = 0; at < house.loads().size(); at++) {
            currents.put(house.loads().get(at), house.currents().get(at));
        }
        currents.put(judged(showerA), shower.currentSource());
        return DemandWorking.of(loads, currents, diversity.list(), cite());
    }

    String cite() {
        return rules.text("cite.demand");
    }

    /** Whether something is missing without which the sum would be wrong; "cannot tell" is then added. */
    boolean blocked(ShowerCase shower, Findings findings, Check check) {
        if (findings.blocked(check) || findings.blocked(check, shower.shared(), SharedQuantity.DESIGN_CURRENT)) {
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
}
