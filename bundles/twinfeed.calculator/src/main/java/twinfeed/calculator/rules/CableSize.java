// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.rules;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * One size of a cable with its tabulated values.
 *
 * @param cable key of the cable
 * @param title what the cable is
 * @param sizeMm2 cross-section of the line conductor, mm2
 * @param dropVPerAm voltage drop of line and neutral at full conductor temperature, V/(A m)
 * @param cpcMm2 usual cross-section of its protective conductor, mm2
 * @param lineOhmPerM resistance of the line conductor at 20 degC, ohm/m
 * @param currents current-carrying capacity by reference method at the reference ambient temperature, A
 */
public record CableSize(
        String cable,
        String title,
        double sizeMm2,
        double dropVPerAm,
        double cpcMm2,
        double lineOhmPerM,
        Map<String, Double> currents) {
    public CableSize {
        currents = Map.copyOf(currents);
    }

    /** Tabulated capacity for a reference method, A; empty where the table has none. */
    public OptionalDouble currentA(String method) {
        Double current = currents.get(method);
        return current == null ? OptionalDouble.empty() : OptionalDouble.of(current);
    }
}
