// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Context;
import twinfeed.calculator.formula.Origin;
import twinfeed.engineering.demand.DiversityLoad;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;

/**
 * The other loads of a house as the survey has them.
 *
 * @param loads the loads with their currents
 * @param currents where their currents come from, in the same order
 * @param missing readings without which the sum would be wrong; nothing may drop out of it
 */
record HouseLoads(List<DiversityLoad> loads, List<CurrentSource> currents, List<String> missing) {
    /** The kind of an instantaneous shower, as survey and rule sets name it. */
    static final String SHOWER = LoadKind.SHOWER.getLiteral();

    /** No house has more equal loads than this; a slip of the pen must not fill the memory. */
    private static final int MOST = 1000;

    HouseLoads {
        loads = List.copyOf(loads);
        currents = List.copyOf(currents);
        missing = List.copyOf(missing);
    }

    static HouseLoads of(Context context) {
        ElectricalFeed feed = context.survey().getElectricity();
        List<DiversityLoad> loads = new ArrayList<>();
        List<CurrentSource> currents = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        if (feed == null || feed.getLoads().isEmpty()) {
            return new HouseLoads(loads, currents, List.of(DemandChecks.LOADS));
        }
        double nominalV = context.rules().number("voltage.nominal");
        int number = 0;
        for (Load load : feed.getLoads()) {
            number++;
            String name = load.getName() == null ? String.valueOf(number) : load.getName();
            if (managed(load)) {
                context.assume("managed", Map.of("load", name));
                continue;
            }
            Double currentA = currentA(load, nominalV);
            if (currentA == null || !load.isSetKind()) {
                missing.add(path(name, load.isSetKind() ? "current" : "kind"));
            } else {
                int before = loads.size();
                add(loads, load, name, currentA);
                currents.addAll(Collections.nCopies(loads.size() - before, source(load, name, nominalV)));
            }
        }
        return new HouseLoads(loads, currents, missing);
    }

    /** By its current, or by its power at the nominal voltage, which is on the safe side of a higher rated one. */
    static @Nullable Double currentA(Load load, double nominalV) {
        Double currentA = load.getCurrent() == null ? null : load.getCurrent().si();
        if (currentA == null && load.getPower() != null) {
            currentA = load.getPower().si() / nominalV;
        }
        return currentA == null || currentA < 0 ? null : currentA;
    }

    /** Whether a load is kept off while the shower runs. */
    static boolean managed(Load load) {
        return Boolean.TRUE.equals(load.getManaged());
    }

    private static CurrentSource source(Load load, String name, double nominalV) {
        if (load.getCurrent() != null) {
            return (working, number, each) -> CurrentSource.read(working, number, each, path(name, "current"));
        }
        double powerW = load.getPower().si();
        return (working, number, each) -> CurrentSource.ofPower(
                working, number, each, powerW, path(name, "power"), nominalV, Origin.rule("voltage.nominal"));
    }

    private static String path(String load, String reading) {
        return DemandChecks.LOADS + "[" + load + "]." + reading;
    }

    private static void add(List<DiversityLoad> loads, Load load, String name, double currentA) {
        int count = load.getCount() == null ? 1 : Math.max(0, Math.min(MOST, load.getCount()));
        boolean socket = load.getKind() == LoadKind.COOKER && Boolean.TRUE.equals(load.getSocket());
        for (int at = 1; at <= count; at++) {
            String id = count == 1 ? name : name + " " + at;
            loads.add(new DiversityLoad(id, load.getKind().getLiteral(), currentA, socket));
        }
    }

    /** The showers among them. */
    List<DiversityLoad> showers() {
        return loads.stream().filter(load -> load.kind().equals(SHOWER)).toList();
    }

    /** These and one more shower, which stands first. */
    List<DiversityLoad> with(DiversityLoad shower) {
        List<DiversityLoad> all = new ArrayList<>();
        all.add(shower);
        all.addAll(loads);
        return all;
    }
}
