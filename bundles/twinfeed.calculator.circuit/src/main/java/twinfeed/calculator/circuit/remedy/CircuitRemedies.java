// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ShowerCase;

/** The remedies for this circuit, gathered for the checks that fail. */
public final class CircuitRemedies {
    private final NewCables cables;
    private final MovedCable moved;
    private final DeviceRemedies devices;
    private final OriginRemedies origin;

    public CircuitRemedies(CircuitSurvey survey) {
        this.moved = new MovedCable(survey);
        this.cables = new NewCables(survey, moved);
        this.devices = new DeviceRemedies(survey);
        this.origin = new OriginRemedies(survey);
    }

    /** Devices that carry the heater. */
    public List<Remedy> forLoad(ShowerCase shower) {
        return devices.forLoad(shower);
    }

    /** Devices of at most a rating, A. */
    public List<Remedy> devicesUpTo(ShowerCase shower, double mostA) {
        return devices.upTo(shower, mostA);
    }

    /** Devices with residual-current protection of their own. */
    public List<Remedy> residual(ShowerCase shower) {
        return devices.combined(shower);
    }

    /** What takes the heater off a residual-current device that it overloads. */
    public List<Remedy> relieving(ShowerCase shower) {
        return devices.relieving(shower);
    }

    /** Devices of a type that is approved for the consumer unit. */
    public List<Remedy> approvedDevices(ShowerCase shower) {
        return devices.approved(shower);
    }

    /** Thicker cables. */
    public List<Remedy> cables(ShowerCase shower) {
        return cables(shower, false);
    }

    /** The cable renewed, of its present size or thicker. */
    public List<Remedy> renewedCables(ShowerCase shower) {
        return cables(shower, true);
    }

    private List<Remedy> cables(ShowerCase shower, boolean same) {
        List<Remedy> remedies = new ArrayList<>(cables.sameRoute(shower, same));
        remedies.addAll(cables.elsewhere(shower, devices.ratings(shower), same));
        return remedies;
    }

    /** What raises the capacity, or lowers the rating that it has to match. */
    public List<Remedy> forCapacity(ShowerCase shower, double ratingA) {
        List<Remedy> remedies = new ArrayList<>(devices.forCable(shower, ratingA));
        remedies.addAll(moved.moved(ratingA, devices.ratings(shower)));
        remedies.addAll(cables.sameRoute(shower, false));
        remedies.addAll(cables.elsewhere(shower, devices.ratings(shower), true));
        return remedies;
    }

    /** What lowers the loop impedance or lets it be higher. */
    public List<Remedy> forLoop(ShowerCase shower, double ratingA) {
        List<Remedy> remedies = new ArrayList<>(devices.residualOrUpTo(shower, ratingA));
        remedies.addAll(cables(shower));
        return remedies;
    }

    public List<Remedy> isolators(ShowerCase shower) {
        return origin.isolators(shower);
    }

    /** Isolators of the present one's rating too, for one that is worn or does not take the cable. */
    public List<Remedy> renewedIsolators(ShowerCase shower) {
        return origin.renewedIsolators(shower);
    }

    public List<Remedy> tails(double neededMm2) {
        return origin.tails(neededMm2);
    }

    public List<Remedy> earthing(double neededMm2) {
        return origin.earthing(neededMm2);
    }

    public List<Remedy> bonding(double neededMm2) {
        return origin.bonding(neededMm2);
    }

    /** Isolator or connections moved to where they may be. */
    public List<Remedy> moveIsolator() {
        return origin.moveIsolator();
    }

    /** Circuit and unit tested apart, before either is condemned. */
    public List<Remedy> testApart() {
        return origin.testApart();
    }

    /** The bad joint found and remade. */
    public List<Remedy> earthPath() {
        return origin.earthPath();
    }

    /** The earth of the supply put right by the network operator, with the largest Ze that is usual, ohm. */
    public List<Remedy> supplyEarth(double usualOhm) {
        return origin.supplyEarth(usualOhm);
    }

    /** Devices in a new consumer unit, which is rated for the fault current. */
    public List<Remedy> newConsumerUnit(ShowerCase shower) {
        return devices.inNewConsumerUnit(shower);
    }

    public List<Remedy> electrode() {
        return origin.electrode();
    }

    public List<Remedy> extraWay() {
        return origin.extraWay();
    }
}
