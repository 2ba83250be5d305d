// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.demand;

import twinfeed.engineering.numeric.Require;

/**
 * A load of a household.
 *
 * @param id what the survey calls it
 * @param kind the kind of load, as the rules name it
 * @param currentA its current, or its device's rating, A, zero or more
 * @param hasSocket whether its control unit has a socket outlet
 */
public record DiversityLoad(String id, String kind, double currentA, boolean hasSocket) {
    /** Checks the range. */
    public DiversityLoad {
        Require.notNegative(currentA, "currentA");
    }
}
