// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.cable;

import twinfeed.engineering.numeric.Require;

/**
 * A piece of a cable run with its own surroundings.
 *
 * @param lengthM length, m, zero or more
 * @param dropVPerAm tabulated voltage drop of both conductors at full temperature, V/(A m): the table's mV/A/m over 1000,
 *     positive
 * @param tabulatedA tabulated current-carrying capacity for the reference method, A, positive
 * @param ca factor for ambient temperature, positive, at most 2
 * @param cg factor for grouping, above 0, at most 1
 * @param ci factor for thermal insulation, above 0, at most 1; 1 where the reference method already contains it
 * @param cf factor for the kind of protective device (below 1 for a rewirable fuse), above 0, at most 1
 */
public record CableSegment(
        double lengthM, double dropVPerAm, double tabulatedA, double ca, double cg, double ci, double cf) {
    /** Checks the ranges. */
    public CableSegment {
        Require.notNegative(lengthM, "lengthM");
        Require.positive(dropVPerAm, "dropVPerAm");
        Require.positive(tabulatedA, "tabulatedA");
        factor(ca, 2, "ca");
        factor(cg, 1, "cg");
        factor(ci, 1, "ci");
        factor(cf, 1, "cf");
    }

    private static void factor(double value, double highest, String argument) {
        Require.within(Require.positive(value, argument), 0, highest, argument);
    }

    /** Returns the capacity in place, A: tabulated capacity times all factors. To be compared with the device's rating. */
    public double capacityA() {
        return Require.result(tabulatedA * ca * cg * ci * cf);
    }

    /** Returns the voltage drop, V, of a current, A, at full conductor temperature. */
    public double dropV(double currentA) {
        return Require.result(Require.notNegative(currentA, "currentA") * dropVPerAm * lengthM);
    }
}
