// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.Remedy;

/** The works that can mend this circuit, gathered for the checks that fail. */
final class CircuitWorks {
    private final CableWorks cables;
    private final DeviceWorks devices;
    private final OriginWorks origin;

    CircuitWorks(CircuitSurvey survey) {
        this.cables = new CableWorks(survey);
        this.devices = new DeviceWorks(survey);
        this.origin = new OriginWorks(survey);
    }

    /** Devices that carry the heater. */
    List<Remedy> forLoad(ShowerCase shower) {
        return devices.forLoad(shower);
    }

    /** Devices of at most a rating, A. */
    List<Remedy> devicesUpTo(ShowerCase shower, double mostA) {
        return devices.upTo(shower, mostA);
    }

    /** Devices with residual-current protection of their own. */
    List<Remedy> residual(ShowerCase shower) {
        return devices.combined(shower);
    }

    /** Devices of a type that is approved for the consumer unit. */
    List<Remedy> approvedDevices(ShowerCase shower) {
        return devices.approved(shower);
    }

    /** Thicker cables by the same route. */
    List<Remedy> cables(ShowerCase shower) {
        return cables.thicker(shower);
    }

    /** The cable renewed, of its present size or thicker. */
    List<Remedy> renewedCables(ShowerCase shower) {
        return cables.renewed(shower);
    }

    /** What raises the capacity, or lowers the rating that it has to match. */
    List<Remedy> forCapacity(ShowerCase shower, double ratingA) {
        List<Remedy> works = new ArrayList<>(devices.forCable(shower, ratingA));
        works.addAll(cables.moved(ratingA, devices.ratings(shower)));
        works.addAll(cables.thicker(shower));
        return works;
    }

    /** What lowers the loop impedance or lets it be higher. */
    List<Remedy> forLoop(ShowerCase shower, double ratingA) {
        List<Remedy> works = new ArrayList<>(devices.residualOrUpTo(shower, ratingA));
        works.addAll(cables.thicker(shower));
        return works;
    }

    List<Remedy> isolators(ShowerCase shower) {
        return origin.isolators(shower);
    }

    List<Remedy> isolatorsForCable(ShowerCase shower) {
        return origin.isolatorsForCable(shower);
    }

    List<Remedy> tails(double neededMm2) {
        return origin.tails(neededMm2);
    }

    List<Remedy> earthing(double neededMm2) {
        return origin.earthing(neededMm2);
    }

    List<Remedy> bonding(double neededMm2) {
        return origin.bonding(neededMm2);
    }

    List<Remedy> electrode() {
        return origin.electrode();
    }

    List<Remedy> extraWay() {
        return origin.extraWay();
    }
}
