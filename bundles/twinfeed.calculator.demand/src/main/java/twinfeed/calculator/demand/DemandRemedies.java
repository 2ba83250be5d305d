// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twinfeed.calculator.Check;
import twinfeed.calculator.Remedy;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;
import twinfeed.units.Current;

/** Remedies against too high a demand. */
final class DemandRemedies {
    /** Service fuses of houses, A (common practice). */
    private static final List<Double> FUSES = List.of(60.0, 80.0, 100.0);

    /** Main switch of a new consumer unit, A (common practice). */
    private static final double NEW_SWITCH_A = 100;

    /** Days until an operator has looked at an enquiry (common practice, our judgement). */
    private static final int OPERATOR_DAYS = 28;

    private final HouseDemand house;
    private final SecondShower second;

    DemandRemedies(HouseDemand house) {
        this.house = house;
        this.second = SecondShower.of(house.feed(), house.rules().number("voltage.nominal"));
    }

    /**
     * What brings the demand within a limit or lifts the limit.
     *
     * @param check fuse or switch
     * @param limitA its limit, A
     * @param demandA the demand, A
     * @param showerA current of the new heater, A
     */
    List<Remedy> against(Check check, double limitA, double demandA, double showerA) {
        List<Remedy> remedies = new ArrayList<>();
        keptOff(LoadKind.VEHICLE, "vehicle-load-management").ifPresent(remedies::add);
        keptOff(LoadKind.STORAGE, "storage-time-switch").ifPresent(remedies::add);
        if (second.exists()) {
            remedies.add(second.priority(showerA));
        }
        remedies.addAll(
                check.equals(DemandChecks.SWITCH) ? largerSwitch(limitA, demandA) : largerFuse(limitA, demandA));
        return remedies;
    }

    /** Loads of a kind that are kept off while the shower runs, if there are any that are not yet. */
    private Optional<Remedy> keptOff(LoadKind kind, String code) {
        boolean any = house.feed() != null
                && house.feed().getLoads().stream().anyMatch(load -> ofKind(load, kind) && !HouseLoads.managed(load));
        return any
                ? Optional.of(new Remedy(
                        code,
                        code,
                        Map.of(),
                        List.of(Remedy.Item.of(code, 1)),
                        false,
                        0,
                        copy -> copy.getElectricity().getLoads().stream()
                                .filter(load -> ofKind(load, kind))
                                .forEach(load -> load.setManaged(true))))
                : Optional.empty();
    }

    private static boolean ofKind(Load load, LoadKind kind) {
        return load.isSetKind() && load.getKind() == kind;
    }

    /** A larger service fuse than the present one, A, that carries a demand, A; tails are then judged by their own check. */
    static List<Remedy> largerFuse(double presentA, double demandA) {
        return FUSES.stream()
                .filter(fuseA -> fuseA > presentA && fuseA >= demandA)
                .limit(1)
                .map(DemandRemedies::fuse)
                .toList();
    }

    private static Remedy fuse(double fuseA) {
        return new Remedy(
                "operator-fuse-" + (int) fuseA,
                "operator-fuse",
                Map.of("rating", fuseA),
                List.of(Remedy.Item.of("operator-fuse", 1)),
                true,
                OPERATOR_DAYS,
                copy -> {
                    copy.getElectricity().setServiceFuse(Current.ofSi(fuseA));
                    copy.getElectricity().setServiceFuseConfirmed(true);
                });
    }

    /**
     * A unit that lets only one of two showers run: the new one, or the strongest of the others. Behind it only the larger of
     * the two counts, so the other adds what it draws more than the new one.
     *
     * @param place where the other stands among the loads of the survey
     * @param otherA its current, A
     * @param showerA current of the new one, A
     */
    static Remedy priority(int place, double otherA, double showerA) {
        return new Remedy(
                "priority-unit",
                "priority-unit",
                Map.of(),
                List.of(Remedy.Item.of("priority-unit", 1)),
                false,
                0,
                copy -> {
                    Load other = copy.getElectricity().getLoads().get(place);
                    other.setPower(null);
                    other.setCurrent(Current.ofSi(Math.max(0, otherA - showerA)));
                });
    }

    /** A consumer unit with a larger main switch. */
    static List<Remedy> largerSwitch(double presentA, double demandA) {
        if (presentA >= NEW_SWITCH_A || demandA > NEW_SWITCH_A) {
            return List.of();
        }
        return List.of(new Remedy(
                "consumer-unit",
                "consumer-unit",
                Map.of("rating", NEW_SWITCH_A),
                List.of(Remedy.Item.of("consumer-unit", 1), Remedy.Item.of("notification", 1)),
                false,
                0,
                copy -> copy.getElectricity().setMainSwitch(Current.ofSi(NEW_SWITCH_A))));
    }
}
