// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import twinfeed.calculator.Working;

/**
 * Where the current of a load comes from.
 *
 * @param currentOrigin origin of a current that was read; empty where it follows from the power
 * @param powerW the power from which it follows, W
 * @param powerOrigin origin of that power
 * @param voltageV the voltage at which it draws that power, V
 * @param voltageOrigin origin of that voltage
 */
record CurrentSource(String currentOrigin, double powerW, String powerOrigin, double voltageV, String voltageOrigin) {
    static final CurrentSource UNKNOWN = read("");

    /** A current that was read, or is the rating of the load's device. */
    static CurrentSource read(String origin) {
        return new CurrentSource(origin, 0, "", 0, "");
    }

    /** A current that follows from a power. */
    static CurrentSource ofPower(double powerW, String powerOrigin, double voltageV, String voltageOrigin) {
        return new CurrentSource("", powerW, powerOrigin, voltageV, voltageOrigin);
    }

    /** Adds the lines that end in the current of a load. */
    void addTo(Working.Builder working, int number, double currentA, String name) {
        String symbol = "I" + number;
        if (powerW <= 0) {
            working.input(symbol, "load", currentA, "A", name, currentOrigin);
            return;
        }
        working.input("P" + number, "loadPower", powerW, "W", name, powerOrigin)
                .input("U" + number, "loadVoltage", voltageV, "V", name, voltageOrigin)
                .step(symbol, "load", "P" + number + " / U" + number, "A", name);
    }
}
