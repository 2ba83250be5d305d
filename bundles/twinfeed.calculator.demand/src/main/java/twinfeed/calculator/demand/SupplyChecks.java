// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;

/** Service fuse and main switch by themselves, and what the network operator has to confirm. */
final class SupplyChecks implements CheckGroup {
    private final HouseDemand house;

    SupplyChecks(HouseDemand house) {
        this.house = house;
    }

    @Override
    public List<Check> checks() {
        return List.of(DemandChecks.SWITCH_PROTECTION, DemandChecks.OPERATOR);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        switchProtection(findings);
        operator(findings);
    }

    /** A main switch below the service fuse is not protected by it; how far that matters its maker says. */
    private void switchProtection(Findings findings) {
        Check check = DemandChecks.SWITCH_PROTECTION;
        Double fuseA = house.fuseA();
        Double switchA = house.switchA();
        if (findings.blocked(check) || fuseA == null || switchA == null) {
            return;
        }
        FindingBuilder finding = findings.on(check)
                .compare(fuseA, switchA)
                .limitIs("mainSwitch", DemandChecks.MAIN_SWITCH)
                .working(() -> Working.start()
                        .input("If", "serviceFuse", fuseA, "A", "", DemandChecks.SERVICE_FUSE)
                        .build());
        finding.remedies(() -> DemandRemedies.largerSwitch(switchA, fuseA));
        finding.add();
    }

    private void operator(Findings findings) {
        Check check = DemandChecks.OPERATOR;
        if (findings.blocked(check)) {
            return;
        }
        Double fuseA = house.fuseA();
        boolean confirmed =
                house.feed() != null && Boolean.TRUE.equals(house.feed().getServiceFuseConfirmed());
        findings.on(check)
                .outcome(confirmed ? Outcome.PASSES : Outcome.FAILS)
                .argument("fuse", fuseA == null ? 0 : fuseA)
                .add();
    }
}
