// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import twinfeed.calculator.formula.Working;
import twinfeed.engineering.demand.DiversityLoad;

/** Where the current of a load comes from. There is one for every load of every draw: its lines are made when a working is asked for. */
@FunctionalInterface
interface CurrentSource {
    /** A current of which nobody says where it was read. */
    CurrentSource UNKNOWN = (working, number, load) -> read(working, number, load, "");

    /** Adds the lines that end in the current of a load, {@code I} with its number. */
    void addTo(Working.Builder working, int number, DiversityLoad load);

    /** A current that was read, or is the rating of the load's device. */
    static void read(Working.Builder working, int number, DiversityLoad load, String origin) {
        working.input("I" + number, "load", load.currentA(), "A", load.id(), origin);
    }

    /**
     * A current that follows from a power.
     *
     * @param powerW the power, W
     * @param voltageV the voltage at which the load draws it, V
     */
    static void ofPower(
            Working.Builder working,
            int number,
            DiversityLoad load,
            double powerW,
            String powerOrigin,
            double voltageV,
            String voltageOrigin) {
        working.input("P" + number, "loadPower", powerW, "W", load.id(), powerOrigin)
                .input("U" + number, "loadVoltage", voltageV, "V", load.id(), voltageOrigin)
                .step("I" + number, "load", "P" + number + " / U" + number, "A", load.id());
    }
}
