// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.rules.DeviceKind;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;

/**
 * Remedies on the protective device. The kind that is there is kept where it can be; a fuse goes together with its fuse board. Only
 * the smallest ratings that carry the heater are offered: a larger one asks more of cable, loop and isolator and gives nothing.
 */
public final class DeviceRemedies {
    /** Ratings that are smaller at all are smaller by more than this share. */
    private static final double BELOW = 0.999;

    /** The two smallest: the smallest alone may be a rating that is hard to get. */
    private static final int RATINGS = 2;

    private final CircuitSurvey survey;
    private final DeviceKind usual;

    DeviceRemedies(CircuitSurvey survey) {
        this.survey = survey;
        RuleSet rules = survey.rules();
        String key = rules.text("device.new.kind");
        this.usual = rules.devices()
                .find(key)
                .orElseThrow(() -> new IllegalArgumentException(
                        "rule set " + rules.id() + ": device.new.kind " + key + " is not in devices.csv"));
    }

    /** Devices of the ratings that suit the heater, other than the one that is there. */
    List<Remedy> forLoad(ShowerCase shower) {
        return upTo(shower, Double.MAX_VALUE);
    }

    /** Those that ask less of the cable than the present one of a rating, A: smaller ones, or as large ones for a rewirable fuse. */
    List<Remedy> forCable(ShowerCase shower, double ratingA) {
        return upTo(shower, survey.run().deviceFactor() < 1 ? ratingA : ratingA * BELOW);
    }

    /** Those of at most a rating, A. */
    List<Remedy> upTo(ShowerCase shower, double mostA) {
        List<Remedy> remedies = new ArrayList<>();
        for (double ratingA : ratings(shower)) {
            if (!LimitType.exceeds(ratingA, mostA)) {
                add(remedies, shower, ratingA);
            }
        }
        return remedies;
    }

    private void add(List<Remedy> remedies, ShowerCase shower, double ratingA) {
        if (keepsBreaker() && !same(ratingA)) {
            remedies.add(device(ratingA, false, DevicePlacement.IN_PLACE));
        }
        boolean there = survey.residual().kind() == RcdKind.RCBO && same(ratingA);
        combined(shower, ratingA).stream()
                .filter(remedy -> !there || !remedy.id().startsWith(DevicePlacement.IN_PLACE.prefix()))
                .forEach(remedies::add);
    }

    /** What disconnects at a higher loop impedance: residual-current protection, or a smaller or quicker device. */
    List<Remedy> residualOrUpTo(ShowerCase shower, double mostA) {
        List<Remedy> remedies = new ArrayList<>(upTo(shower, mostA));
        for (Remedy each : combined(shower)) {
            if (remedies.stream().noneMatch(known -> known.id().equals(each.id()))) {
                remedies.add(each);
            }
        }
        return remedies;
    }

    /** Devices with residual-current protection of their own, of the present rating first. */
    List<Remedy> combined(ShowerCase shower) {
        List<Remedy> remedies = new ArrayList<>();
        Double presentA = survey.device().ratingA();
        List<Double> ratings = ratings(shower);
        ShowerLoad load = shower.load();
        if (presentA != null
                && load != null
                && !LimitType.fallsShort(presentA, load.designA())
                && usual.ratings().contains(presentA)
                && !ratings.contains(presentA)) {
            remedies.addAll(combined(shower, presentA));
        }
        ratings.forEach(ratingA -> remedies.addAll(combined(shower, ratingA)));
        return remedies;
    }

    /** Those that take the heater off a residual-current device that it overloads together with other circuits. */
    List<Remedy> relieving(ShowerCase shower) {
        boolean shared = survey.upstream().there() || survey.residual().scope() != RcdScope.CIRCUIT;
        return combined(shower).stream()
                .filter(remedy -> !shared || !remedy.id().startsWith(DevicePlacement.IN_PLACE.prefix()))
                .toList();
    }

    /** Devices in a new consumer unit, of the present rating too. */
    List<Remedy> inNewConsumerUnit(ShowerCase shower) {
        return ratings(shower).stream()
                .map(ratingA -> device(ratingA, true, DevicePlacement.CONSUMER_UNIT))
                .toList();
    }

    /** Devices of an approved type, of the present rating too. */
    List<Remedy> approved(ShowerCase shower) {
        List<Remedy> remedies = new ArrayList<>();
        for (double ratingA : ratings(shower)) {
            if (keepsBreaker()) {
                remedies.add(device(ratingA, false, DevicePlacement.IN_PLACE));
            }
            remedies.addAll(combined(shower, ratingA));
        }
        return remedies;
    }

    /** A breaker may stay a breaker where a residual-current device protects it already. */
    private boolean keepsBreaker() {
        return survey.residual().kind() == RcdKind.RCCB && !survey.device().family(DeviceKind.Family.FUSE);
    }

    private boolean same(double ratingA) {
        return Objects.equals(survey.device().ratingA(), ratingA)
                && survey.device().kind() != null
                && Objects.equals(survey.device().kind().multiple(), usual.multiple());
    }

    /** The ratings that are offered, A. */
    List<Double> ratings(ShowerCase shower) {
        ShowerLoad load = shower.load();
        Double mostA = SiValues.of(shower.heater().getMaximumDevice());
        if (load == null) {
            return List.of();
        }
        return usual.ratings().stream()
                .filter(ratingA -> ratingA >= load.designA() && (mostA == null || ratingA <= mostA))
                .limit(RATINGS)
                .toList();
    }

    private Remedy device(double ratingA, boolean combined, DevicePlacement placement) {
        return new DeviceChange(survey.rules(), usual, ratingA, combined, placement).remedy();
    }

    /** A device with residual-current protection, wherever it can be put. */
    private List<Remedy> combined(ShowerCase shower, double ratingA) {
        return placements(shower).stream()
                .map(placement -> device(ratingA, true, placement))
                .toList();
    }

    /**
     * Where a device can be put. A fuse goes with its fuse board, or into an enclosure of its own. Behind a residual-current device that
     * the heater overloads a new one in the same way would leave that as it is: then it goes where that is not ahead of it. With an own
     * electrode nothing may be without a residual-current device, so there the one ahead is replaced, unless other circuits rely on its
     * sensitivity.
     */
    private List<DevicePlacement> placements(ShowerCase shower) {
        boolean electrode = survey.feed().ownElectrode();
        if (survey.device().family(DeviceKind.Family.FUSE)) {
            return electrode
                    ? List.of(DevicePlacement.CONSUMER_UNIT)
                    : List.of(DevicePlacement.ENCLOSURE, DevicePlacement.CONSUMER_UNIT);
        }
        List<DevicePlacement> placements = new ArrayList<>(List.of(DevicePlacement.IN_PLACE));
        if (survey.overloadsShared(shower)) {
            if (electrode && !survey.residual().within(survey.residualLimitA())) {
                placements.add(DevicePlacement.DELAYED_MAIN);
            } else if (!electrode) {
                if (survey.feed().spareWayOfItsOwn()) {
                    placements.add(DevicePlacement.OWN_WAY);
                }
                placements.add(DevicePlacement.ENCLOSURE);
            }
            placements.add(DevicePlacement.CONSUMER_UNIT);
        }
        return placements;
    }
}
