// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.engineering.demand.DiversityLoad;

/**
 * The maximum demand against service fuse and main switch. The allowances are guidance: where no load is added the house stays what it
 * is, and an excess is advice with what to confirm.
 */
final class MaximumDemandChecks implements CheckGroup {
    private static final String SERVICE_FUSE = "serviceFuse";

    private final HouseDemand house;
    private final DemandRemedies remedies;

    MaximumDemandChecks(HouseDemand house, DemandRemedies remedies) {
        this.house = house;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(DemandChecks.FUSE, DemandChecks.SWITCH, DemandChecks.AS_IT_IS);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        against(shower, findings, DemandChecks.FUSE, house.fuseA(), SERVICE_FUSE, DemandChecks.SERVICE_FUSE);
        against(shower, findings, DemandChecks.SWITCH, house.switchA(), "mainSwitch", DemandChecks.MAIN_SWITCH);
        asItIs(shower, findings);
    }

    private void against(
            ShowerCase shower, Findings findings, Check check, @Nullable Double limitA, String limit, String origin) {
        if (house.present().likeForLike(shower)) {
            findings.on(check).variant("likeForLike").add();
            return;
        }
        Double showerA = shower.currentA();
        if (house.blocked(shower, findings, check) || limitA == null || showerA == null) {
            return;
        }
        List<DiversityLoad> loads = house.loads(showerA);
        double demandA = house.demandA(loads);
        findings.on(check)
                .compare(demandA, limitA)
                .limitIs(limit, origin)
                .argument("shower", showerA)
                .source(house.cite())
                .working(() -> house.working(loads, shower, showerA))
                .remedies(() -> remedies.against(check, limitA, demandA, showerA))
                .add();
    }

    /** A house whose demand does not change, where the sum is over its fuse. */
    private void asItIs(ShowerCase shower, Findings findings) {
        Check check = DemandChecks.AS_IT_IS;
        if (!house.present().likeForLike(shower)) {
            findings.on(check).add();
            return;
        }
        Double showerA = shower.currentA();
        Double fuseA = house.fuseA();
        if (house.blocked(shower, findings, check) || showerA == null || fuseA == null) {
            return;
        }
        List<DiversityLoad> loads = house.loads(showerA);
        findings.on(check)
                .compare(house.demandA(loads), fuseA)
                .limitIs(SERVICE_FUSE, DemandChecks.SERVICE_FUSE)
                .source(house.cite())
                .working(() -> house.working(loads, shower, showerA))
                .add();
    }
}
