// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.engineering.demand.DiversityLoad;

/** Two showers at once, and what a priority unit would do. */
final class SecondShowerCheck implements CheckGroup {
    private final HouseDemand house;

    SecondShowerCheck(HouseDemand house) {
        this.house = house;
    }

    @Override
    public List<Check> checks() {
        return List.of(DemandChecks.SECOND_SHOWER);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        Check check = DemandChecks.SECOND_SHOWER;
        Double fuseA = house.fuseA();
        Double showerA = shower.currentA();
        if (house.house().missing().isEmpty() && house.house().showers().isEmpty()) {
            findings.on(check).add();
            return;
        }
        if (house.blocked(shower, findings, check) || fuseA == null || showerA == null) {
            return;
        }
        List<DiversityLoad> loads = house.loads(showerA);
        findings.on(check)
                .compare(house.demandA(loads), fuseA)
                .limitIs("serviceFuse", DemandChecks.SERVICE_FUSE)
                .argument("single", house.demandA(withoutStrongestOther(loads, showerA)))
                .argument("others", house.house().showers().size())
                .source(house.cite())
                .working(() -> house.working(loads, shower, showerA))
                .add();
    }

    /** The loads as they count behind a priority unit between the new shower and the strongest other one. */
    private List<DiversityLoad> withoutStrongestOther(List<DiversityLoad> loads, double showerA) {
        DiversityLoad strongest = house.house().showers().stream()
                .max(Comparator.comparingDouble(DiversityLoad::currentA))
                .orElseThrow();
        List<DiversityLoad> reduced = new ArrayList<>(loads);
        reduced.remove(strongest);
        reduced.add(new DiversityLoad(
                strongest.id(), HouseLoads.SHOWER, Math.max(0, strongest.currentA() - showerA), false));
        return reduced;
    }
}
